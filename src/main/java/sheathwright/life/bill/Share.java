package sheathwright.life.bill;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;

/**
 * One mark's part in an item, split between what is in the price and what is not.
 *
 * @param mark its number
 * @param key the place that it lies in
 * @param on the day on which it was found; empty if nobody said
 * @param reason in a sentence
 * @param isVoid whether it was taken back
 * @param isTyped whether its action was typed
 * @param found how much it asks for; nothing once it is taken back
 * @param declined how much of that the owner refused
 * @param kept what is left of it
 * @param upTo the same, with everything that was found before it
 * @param sellable how much of it lies below the ceiling and below where both sides talk again
 * @param allowable how much of it lies below the ceiling
 * @param included how much is in the agreed price
 * @param billed how much is to be billed over all
 * @param open how much has to be talked about before it is billed
 * @param uncharged how much lies above the ceiling
 * @param before how much of it earlier orders ask for
 * @param now how much the next order asks for; less than nothing for what was taken back
 */
public record Share(
    String mark,
    String key,
    String on,
    String reason,
    boolean isVoid,
    boolean isTyped,
    Figure<Ratio> found,
    Figure<Ratio> declined,
    Figure<Ratio> kept,
    Figure<Ratio> upTo,
    Figure<Ratio> sellable,
    Figure<Ratio> allowable,
    Figure<Ratio> included,
    Figure<Ratio> billed,
    Figure<Ratio> open,
    Figure<Ratio> uncharged,
    Figure<Ratio> before,
    Figure<Ratio> now) {}

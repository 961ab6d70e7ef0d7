package sheathwright.framing.sister;

import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;
import sheathwright.wood.LumberSize;

/**
 * A full-length sister of one size beside a given rafter.
 *
 * @param size nominal
 * @param rafter bending of the old rafter beside it
 * @param sister bending of the sister
 * @param deflection sag of both under the live load
 * @param ratio the greatest of the three
 * @param price of one stick
 * @param passes whether it is sold and all three are within 1
 * @param place how many of those that pass are cheaper, and one
 * @param rank the same where it passes itself
 */
public record SisterSize(
    Choice<LumberSize> size,
    Check rafter,
    Check sister,
    Check deflection,
    Figure<Ratio> ratio,
    Figure<Per<Money, Pieces>> price,
    Choice<YesNo> passes,
    Figure<Ratio> place,
    Figure<Ratio> rank) {}

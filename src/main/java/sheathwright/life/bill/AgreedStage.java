package sheathwright.life.bill;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;

/**
 * One payment as it was agreed.
 *
 * @param name of the stage, as in the table of stages
 * @param amount what is paid then
 */
public record AgreedStage(String name, Figure<Money> amount) {}

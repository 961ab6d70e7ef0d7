package sheathwright.life.bill;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.job.Estimate.Tie;

/**
 * Where every mark went: each part of it once, to the agreed price, a change order, no charge, the
 * owner's refusal, or to nothing because it was taken back or stopped. What is said of marks,
 * orders and agreed items is held against the invoice that was made from them, so that a line which
 * is lost anywhere is missed.
 */
public final class Reconciliation {

  /**
   * One part of a mark.
   *
   * @param mark its number
   * @param key the place that it lies in
   * @param item what it asks for; empty where it asks for nothing that is billed
   * @param fate where it went
   * @param where more closely: the number of the change order, or why nothing is charged
   * @param quantity how much of the mark; of one that asks for nothing, the mark itself
   */
  public record Part(
      String mark, String key, String item, Fate fate, String where, Figure<Ratio> quantity) {}

  private final List<Part> parts;
  private final List<Tie> ties;

  /**
   * The tables as they stand, against an invoice.
   *
   * @param accounts from the tables as they stand
   * @param invoice as it was made
   */
  public static Reconciliation of(Accounts accounts, Invoice invoice) {
    return new Reconciliation(accounts, invoice);
  }

  private Reconciliation(Accounts accounts, Invoice invoice) {
    parts = MarkFates.of(accounts);
    ties = new ReconciliationTies(accounts, invoice).all();
  }

  /** Every part of every mark. */
  public List<Part> parts() {
    return parts;
  }

  /** The same as a list. */
  public Roll roll() {
    return MarkFates.roll(parts);
  }

  /** What must hold; one of them does not as soon as a mark, an order line or an item is lost. */
  public List<Tie> ties() {
    return ties;
  }
}

package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import sheathwright.job.Estimate.Tie;

/** What must hold between marks, orders, what was agreed, and the invoice. */
final class ReconciliationTies {

  private final Accounts accounts;
  private final Invoice invoice;

  ReconciliationTies(Accounts accounts, Invoice invoice) {
    this.accounts = accounts;
    this.invoice = invoice;
  }

  List<Tie> all() {
    List<Tie> all = new ArrayList<>(accounts.agreement().ties());
    all.addAll(invoice.ties());
    return all;
  }
}

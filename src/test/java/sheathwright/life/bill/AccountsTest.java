package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheathwright.job.life.Item;

/** What was found is held against what was agreed, and against what was asked for since. */
class AccountsTest {

  private static final String ASKED =
      "Everything found beyond what was agreed stands in a change order";

  @Test
  void whatIsFoundBeyondTheAgreement_isMissedUntilItIsAskedFor() {
    Tables tables = GableOrderTest.gable("half");
    assertThat(Tables.broken(tables.accounts().ties())).containsExactly(ASKED);
    tables.order("2027-06-02", "approved");
    assertThat(Tables.broken(tables.accounts().ties())).isEmpty();
    tables.mark("16", "B-3-1", Item.SHEET, 1, "2027-06-03");
    assertThat(Tables.broken(tables.accounts().ties())).containsExactly(ASKED);
    tables.order("2027-06-03", "refused");
    assertThat(Tables.broken(tables.accounts().ties())).isEmpty();
  }

  /** Above the ceiling nothing is owed, and beyond the re-open count nothing before both talk. */
  @Test
  void whatIsBeyondTheAgreedLimits_isNotMissed() {
    Tables tables = GableOrderTest.gable("half");
    tables.agreed("reopen", "", "0.00", "", "", "3.5", "talk");
    tables.order("2027-06-02", "approved");
    tables.mark("16", "B-3-1", Item.SHEET, 40, "2027-06-03");
    assertThat(tables.accounts().items().get(0).found().value()).isGreaterThan(40);
    assertThat(Tables.broken(tables.accounts().ties())).isEmpty();
  }
}

package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** What no deck, price or log can have is refused where it would count. */
class ForecastRefusalsTest {

  private static final String DECK = "sheets=44, seen=10, seen_bad=2, alpha=0.8, beta=12";

  /** The ranges are the texts' own; which numbers stand in them is StatedRangesTest's. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "ceiling_charge: " + DECK + ", ceiling_sheets=2.5, cost_usd=80 | ceiling_sheets is",
        "ceiling_charge: " + DECK + ", ceiling_sheets=2, cost_usd=10001 | cost_usd is",
        "fixed_deck_price: " + DECK + ", confidence_pct=0.5, cost_usd=80 | confidence_pct is",
        "fixed_deck_price: " + DECK + ", confidence_pct=80, cost_usd=10001 | cost_usd is",
        "fail_rate: kept_sheets=100, failed=2, confidence_pct=49 | confidence_pct is",
        "fail_rate: kept_sheets=3, failed=5 | failed exceeds the sheets kept: 5 sheets of 3 sheets",
        "most_bad_sheets: sheets=44, seen=10, seen_bad=2, confidence_pct=49 | confidence_pct is",
        "most_bad_sheets: sheets=44, seen=50, seen_bad=2 |"
            + " seen exceeds the sheets there are: 50 of 44; it must be at most as many",
        "most_bad_sheets: sheets=44, seen=10, seen_bad=11 |"
            + " seen_bad exceeds the sheets seen: 11 of 10",
        "chance_of_more: " + DECK + ", more_than=1.5 | more_than is",
        "redeck_break_even: sheets=0, patch_usd=67, redeck_usd=58, keep_usd=6 | sheets is",
        "redeck_break_even: sheets=44, patch_usd=6, redeck_usd=58, keep_usd=6 |"
            + " no more than keeping a sound one",
        "hours_rate: fitted_h=0.5, se_h=0.1, rows=2, book_h=0.4 | three rows of the log"
      })
  void whatCannotBe_isRefused(String call, String reason) {
    assertThat(Asked.line(call).refusedOutright().orElseThrow()).contains(reason);
  }
}

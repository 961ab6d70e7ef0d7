package sheathwright.job.life;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.table.JobText;

/** What both sides agreed since raises what was agreed, and says who said yes. */
class TalkRulesTest {

  private static final String HEADING = "item,most,usd,approved_by,approved_how,approved_on\n";

  private static JobText talked(String... lines) {
    return LifeText.opened()
        .withLines(
            "agreed", "reopen,,0,,,5,talk again", "pre-agreed,,200,,,2,without a further yes")
        .withTable("talks", HEADING + String.join("\n", lines) + "\n");
  }

  @Test
  void raisedLimits_andAPriceForWhatHadNone_areTaken() {
    assertThat(
            talked(
                    "reopen,7,,Nobody,signed,2027-05-11",
                    "sheet,12,,Nobody,e-mail,2027-05-11",
                    "pre-agreed,3,400,Nobody,e-mail,2027-05-12T10:00",
                    "reopen,8,,Nobody,signed,2027-05-13",
                    "scab,,25,Nobody,signed,2027-05-13")
                .problems())
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "reopen,5,,Nobody,signed,2027-05-11|most|5 is given, but 5 held before; this table raises: give more",
        "sheet,9,,Nobody,signed,2027-05-11|most|9 is given, but 10 held before; this table raises: give more",
        "reopen,,,Nobody,signed,2027-05-11|most|it is empty; give what reopen is from now on",
        "reopen,7,95,Nobody,signed,2027-05-11|usd|a price is given, but reopen is a limit; what is billed is billed at the agreed price: leave it blank, or let the owner choose an option at another price (options.csv)",
        "refasten,,9,Nobody,signed,2027-05-11|item|refasten was agreed at $8.00, and that price stands; take the line away, or let the owner choose an option at another price (options.csv)",
        "scab,,,Nobody,signed,2027-05-11|usd|it is empty; give the price of one scab",
        "scab,4,25,Nobody,signed,2027-05-11|most|scab has no limit, only a price; leave it blank",
        "sheets,12,,Nobody,signed,2027-05-11|item|\"sheets\" is not known; it must be reopen, pre-agreed, sheet for the ceiling, or what has no agreed price: relief, block, scab, clip, lift, cover, board, renail, sister, shim",
        "reopen,7,,Nobody,pre-agreed,2027-05-11|approved_how|pre-agreed is given, but a limit is not raised by itself; ask who may say yes, then give signed or e-mail",
        "reopen,7,,Nobody,signed,2027-05-05|approved_on|2027-05-05 is given, but the job was agreed on 2027-05-06 (job.csv, line 22); give that or a later day"
      })
  void whatRaisesNothing_isRefusedWithItsPlace(String line, String column, String said) {
    assertThat(talked(line).problems())
        .containsExactly("talks.csv, line 2, column " + column + ": " + said);
  }

  @Test
  void nobodyTalksAgain_beforeAnythingIsAgreed() {
    assertThat(
            JobText.small()
                .withTable("talks", HEADING + "reopen,7,,Nobody,signed,2027-05-11\n")
                .problems())
        .singleElement()
        .asString()
        .startsWith("talks.csv: nothing is agreed yet, so nobody has talked again; ");
  }

  /** By hand: an order of $270 is beyond $200, and within $400 from the day on which that holds. */
  @ParameterizedTest
  @CsvSource({"2027-05-11,0", "2027-05-12,1"})
  void whatIsPreAgreed_isRaisedFromItsDayOn(String raisedOn, int problems) {
    JobText job =
        talked("pre-agreed,,400,Nobody,e-mail," + raisedOn)
            .with(
                "orders",
                "90,0.25,approved,Nobody at all,signed",
                "270,0.25,approved,Nobody at all,pre-agreed")
            .with("order_lines", "half,1,90", "half,2,270");
    assertThat(job.problems()).hasSize(problems);
    assertThat(job.problems())
        .allSatisfy(said -> assertThat(said).contains("it comes to $270.00 in all"));
  }
}

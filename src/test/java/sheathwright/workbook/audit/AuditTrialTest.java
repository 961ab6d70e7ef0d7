package sheathwright.workbook.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheathwright.Walk;
import sheathwright.workbook.page.Samples;

/** Whether an audit finds what people do wrong, and leaves alone what they do right. */
class AuditTrialTest {

  private static final Map<String, byte[]> SMALL = new LinkedHashMap<>();
  private static byte[] estimate;

  @BeforeAll
  static void write() {
    Map<String, byte[]> books = Samples.ofJob("quince-hollow");
    estimate = books.get("quince-hollow-estimate");
    SMALL.put("quote", books.get("quince-hollow-quote"));
  }

  @Test
  void everyMistakeInAQuote_isFound() {
    AuditTrial trial = new AuditTrial(SMALL, 2027);

    trial.makeMistakes(55);

    assertThat(trial.counts().keySet()).containsExactlyInAnyOrder(Mistake.values());
    assertThat(trial.missed()).isEmpty();
  }

  @Test
  void everyMistakeInAnEstimate_isFound() {
    AuditTrial trial = new AuditTrial(Map.of("estimate", estimate), 2028);

    trial.makeMistakes(Walk.isWhole() ? 7 : 3);

    assertThat(trial.missed()).isEmpty();
  }

  @Test
  void whatWasOnlyFilledIn_raisesNoAlarm() {
    AuditTrial trial = new AuditTrial(SMALL, 2029);

    for (int i = 0; i < 9; i++) {
      byte[] quote = SMALL.get("quote");
      assertThat(AuditTrial.alarms(quote, trial.filledIn(quote, i))).isEmpty();
    }
    assertThat(AuditTrial.alarms(estimate, trial.filledIn(estimate, 4))).isEmpty();
  }
}

package sheathwright.job.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;

/** Sticks on sale: what is needed is found among them, and what is not is said in one line. */
class LumberTest {

  private static final JobText COTTAGE = JobText.demo("mistwater-cottage");

  /** A stick of 2x8, 14 ft at $20 instead of $17.10: (20 + 26 × 0.026) × 1.065 + 1.5 × 46. */
  @Test
  void aSister_costsWhatItsStickCosts() {
    Estimate dearer = new Estimate(COTTAGE.with("lumber", "2x8,14,17.10", "2x8,14,20.00").job());
    assertThat(dearer.rafterLeveling().orElseThrow().sisterPrice().direct().value())
        .isEqualTo(
            (20 + 26 * 0.026) * 1.065 + 1.5 * 46, org.assertj.core.api.Assertions.within(1e-9));
  }

  @Test
  void anotherLengthOrSize_changesNothing() {
    Estimate other =
        new Estimate(
            COTTAGE
                .with("lumber", "2x8,16,19.80", "2x8,16,99")
                .with("lumber", "2x10,14,24.90", "2x10,14,99")
                .job());
    assertThat(other.rafterLeveling().orElseThrow().sisterPrice().quoted().value()).isEqualTo(118);
  }

  /** A yard that has no 2x8 long enough sells none: the next size that passes is the cheapest. */
  @Test
  void sisterSizes_areThoseOnSaleInTheLengthThatIsNeeded() {
    assertThat(cheapest(COTTAGE)).isEqualTo("2x8");
    JobText deeper = COTTAGE.with("job", "sister_size,2x8", "sister_size,2x10");
    assertThat(cheapest(deeper.with("lumber", "2x8,14,17.10,invented\n", ""))).isEqualTo("2x10");
  }

  private static String cheapest(JobText job) {
    return new Estimate(job.job()).framing().sisters().orElseThrow().cheapest().plain();
  }

  @Test
  void aSurvey_saysWhichRaftersStickIsNotOnSale() {
    JobText job = JobText.demo("tallow-end").with("lumber", "2x6,12,9.60,invented\n", "");
    assertThatThrownBy(() -> new Estimate(job.job()))
        .message()
        .startsWith("lumber.csv: a 2x6 of 12 ft is needed for the sister of rafter ")
        .endsWith(" and is not in it; add a line with size 2x6, length_ft 12 and its usd");
  }

  @Test
  void aJobWithSistersAndNoLumber_saysSo() {
    JobText none = COTTAGE.withoutTable("lumber");
    assertThatThrownBy(() -> new Estimate(none.job()))
        .hasMessage(
            "lumber.csv: a 2x8 of 14 ft is needed for the sisters and is not in it; add a line with size 2x8, length_ft 14 and its usd");
  }

  @Test
  void aStickSaidTwice_isSaid() {
    assertThat(COTTAGE.withLines("lumber", "2x8,14,18,").problems())
        .containsExactly(
            "lumber.csv, line 9, column length_ft: a 2x8 of 14 ft appears twice; give each stick one line");
  }

  @ParameterizedTest
  @CsvSource({
    "prices, 'sister_stick,17.10,'",
    "prices, 'block_stick,4.10,'",
    "prices, 'stick_2x8,17.10,'",
    "job, 'sister_stick_ft,14,'"
  })
  void anOldKey_saysWhereItBelongsNow(String table, String line) {
    assertThat(COTTAGE.withLines(table, line).problems())
        .singleElement()
        .asString()
        .contains(
            "\"%s\" no longer stands here: lumber.csv has a line for every stick on sale: its size, its length_ft and its usd, such as 2x4, 8, 4.10; delete this line"
                .formatted(line.substring(0, line.indexOf(','))));
  }
}

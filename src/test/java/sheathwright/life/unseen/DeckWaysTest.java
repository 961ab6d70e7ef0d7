package sheathwright.life.unseen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;

/**
 * A deck of 44 whole sheets, 18 of them seen and 1 bad; 3 in the price at $96, $117 on top, $80
 * back, $25 for a surprise; one costs $102.8057 with overhead when it is scattered. Expected
 * values: a script of its own for the beta-binomial, and arithmetic by hand on what it gives.
 */
class DeckWaysTest {

  private static final Path DEMO = Path.of("demo-data", "quince-hollow");

  @TempDir Path folder;

  @BeforeEach
  void copied() throws IOException {
    try (Stream<Path> tables = Files.list(DEMO)) {
      for (Path table : tables.toList()) {
        Files.copy(table, folder.resolve(table.getFileName()));
      }
    }
    Files.writeString(
        folder.resolve("planes.csv"),
        "plane,eave_ft,slope_length_ft,joint_in,stagger_in\nA,88,16,96,0\n");
    Files.writeString(folder.resolve("zones.csv"), "zone,places,seen,seen_bad\nattic,44,18,1\n");
    rates("bad_alpha,1.472231,", "bad_beta,21.794786,");
  }

  private void rates(String... lines) throws IOException {
    String old = Files.readString(DEMO.resolve("rates.csv"));
    Files.writeString(
        folder.resolve("rates.csv"),
        old.lines()
                .filter(line -> Stream.of(lines).noneMatch(more -> key(more).equals(key(line))))
                .reduce("", (all, line) -> all + line + "\n")
            + String.join("\n", lines)
            + "\n");
  }

  private static String key(String line) {
    return line.substring(0, line.indexOf(','));
  }

  private void job(String... lines) throws IOException {
    Files.writeString(
        folder.resolve("job.csv"),
        Files.readString(DEMO.resolve("job.csv")) + String.join("\n", lines) + "\n");
  }

  private Estimate estimate() {
    return new Estimate(Job.in(folder));
  }

  private static DeckPricing pricing(Estimate estimate) {
    return DeckPricing.of(estimate, JobForecast.before(estimate));
  }

  private static DeckWays ways(Estimate estimate) {
    return DeckWays.of(estimate, pricing(estimate));
  }

  private static List<Double> line(DeckWays ways, int row) {
    return ways.roll().rows().get(row).stream().skip(1).map(DeckWaysTest::number).toList();
  }

  private static double number(Traced cell) {
    return ((Figure<?>) cell).value();
  }

  private static void isLine(List<Double> found, double... expected) {
    for (int i = 0; i < expected.length; i++) {
      assertThat(found.get(i)).as("column " + i).isCloseTo(expected[i], within(6e-3));
    }
  }

  /**
   * By hand: 2, 4, 5 and 5 bad are not passed in half, 8, 9 and 19 of 20 houses. 3 × 96 = 288; two
   * needed: − 80 = 208; four: + 117 = 405; five: 522; 44: 288 + 41 × 117 = 5085.
   */
  @Test
  void aUnitPrice_keepsAsMuchAsTheSheetsWereForeseen() {
    List<Double> unit = line(ways(estimate()), 0);
    isLine(unit, 208, 405, 522, 522, 5085, 45.81, 0, 5.19);
    assertThat(unit.get(8)).isCloseTo(19.9573 + 11.5548, within(1e-4));
  }

  /** By hand: 6 on the bill at most, whose charge is $3.60; 288 + 3 × 117 + 3.60 = 642.60. */
  @Test
  void aCeiling_isTheLowestThatItsChargePaysFor() {
    DeckWays ways = ways(estimate());
    assertThat(ways.ceiling().value()).isEqualTo(6);
    assertThat(ways.charge().value()).isEqualTo(3.60);
    // the owner is not billed 0.035032 sheets at 117 and pays the charge
    isLine(line(ways, 1), 211.60, 408.60, 525.60, 525.60, 642.60);
    assertThat(line(ways, 1).get(7)).isCloseTo(5.19 - 0.035032 * 117 + 3.60, within(0.011));
  }

  /** By hand: 4 sheets are enough in 8 of 10; 4 × 117 = 468; less 2.557612 × 102.8057. */
  @Test
  void aFixedPrice_isTheSameInEveryHouse() {
    List<Double> fixed = line(ways(estimate()), 2);
    isLine(fixed, 468, 468, 468, 468, 468);
    assertThat(fixed.get(7)).isCloseTo(468 - 2.557612 * 102.8057, within(0.01));
    assertThat(fixed.get(8)).isCloseTo(10.9571, within(1e-4));
  }

  /** By hand: ratio (117 + 25 − 96) ÷ (117 + 25 − 80); P95 is 5. */
  @Test
  void whatTheOfficeSets_isSuggestedWithItsChance() {
    Estimate estimate = estimate();
    DeckPricing pricing = pricing(estimate);
    assertThat(pricing.ratio().value()).isCloseTo(74.1935, within(1e-4));
    assertThat(pricing.perPlace().value()).isEqualTo(1);
    List<List<Traced>> numbers = DeckNumbers.of(estimate.job(), pricing).roll().rows();
    assertThat(number(numbers.get(0).get(1))).isEqualTo(3);
    assertThat(number(numbers.get(0).get(3))).isEqualTo(3);
    assertThat(number(numbers.get(0).get(4))).isCloseTo(22.5119, within(1e-4));
    assertThat(number(numbers.get(1).get(3))).isEqualTo(6);
    assertThat(number(numbers.get(1).get(4))).isCloseTo(2.1285, within(1e-4));
    assertThat(number(numbers.get(2).get(3))).isEqualTo(6);
    assertThat(numbers.get(2).get(1).shown()).isEqualTo("not set");
    assertThat(pricing.beyondTheQuantity().value()).isCloseTo(3.45, within(1e-9));
  }

  /** By hand: without a credit the ratio is 46 ÷ 142 = 0.323944, and 2 are enough in 0.5753. */
  @Test
  void withoutACredit_fewerAreInThePrice() throws IOException {
    job();
    Files.writeString(
        folder.resolve("job.csv"),
        Files.readString(folder.resolve("job.csv"))
            .replaceFirst("credit_usd,[^,]*,", "credit_usd,0,"));
    DeckPricing pricing = pricing(estimate());
    assertThat(pricing.ratio().value()).isCloseTo(32.3944, within(1e-4));
    assertThat(pricing.included().value()).isEqualTo(2);
  }

  /** By hand: ceilings cost $8.72 at 5 and $0.53 at 8; none is asked for at every sheet. */
  @Test
  void theOfficeSaysWhatItCarries() throws IOException {
    rates("bad_alpha,1.472231,", "bad_beta,21.794786,", "ceiling_charge_usd,9,");
    assertThat(ways(estimate()).ceiling().value()).isEqualTo(5);
    assertThat(ways(estimate()).charge().value()).isEqualTo(8.72);
    job("ceiling_sheets,8,");
    assertThat(ways(estimate()).charge().value()).isEqualTo(0.53);
    job("ceiling_sheets,44,");
    DeckWays all = ways(estimate());
    assertThat(all.charge().value()).isZero();
    assertThat(all.carriers().get("With a ceiling").value()).startsWith("The owner all of it");
    assertThat(line(all, 1)).isEqualTo(line(all, 0));
  }
}

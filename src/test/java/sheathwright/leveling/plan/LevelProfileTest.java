package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.figure.Reading;
import sheathwright.figure.YesNo;
import sheathwright.leveling.plan.Sisters.SisterStock;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.Profile.Stretch;
import sheathwright.leveling.string.SaggedSpan;
import sheathwright.leveling.string.TestRafters;
import sheathwright.wood.LumberSize;

/** Sisters and strips found by walking a rafter by the inch. The same rafters each time. */
class LevelProfileTest {

  private static final FramingAnswer PASSES = FramingAnswer.of(Amounts.number(0.5));
  private static final LevelRules RULES =
      LevelRules.usual(LumberSize.SIZE_2X10, LumberSize.SIZE_2X6);
  private static final LevelRules.Plain PLAIN = RULES.plain(Reading.aside());

  /** A rafter that sags as a parabola, read at every inch. */
  private static LevelRafter parabola(double sag, int span) {
    double[] places = new double[span + 1];
    double[] drops = new double[span + 1];
    for (int i = 0; i <= span; i++) {
      places[i] = i;
      drops[i] = 4 * sag * i * (span - i) / ((double) span * span);
    }
    return new LevelRafter(
        TestRafters.rafter("R1", 0, places, drops), Amounts.in(0), Amounts.in(span));
  }

  @Test
  void sisterOfAParabola_isTheOneOfTheClosedFormula() {
    Random random = new Random(9);
    for (int i = 0; i < 40; i++) {
      double sag = random.nextInt(8, 40) / 16.0;
      int span = random.nextInt(100, 200);
      LevelPlan plan = LevelPlan.of("A", List.of(parabola(sag, span)), RULES, PASSES);
      SisterStock closed =
          Sisters.sisterStock(
              SaggedSpan.sag(Amounts.in(sag)).span(Amounts.in(span)),
              SisterPlan.size(LumberSize.SIZE_2X10)
                  .tolerance(Amounts.in(0.375))
                  .lap(Amounts.in(24)),
              Amounts.pieces(1));
      PlannedSister sister = plan.rafters().get(0).sister();
      // read at every inch, a parabola is straight between: off by at most sag ÷ span², some mils
      assertThat(sister.length().value()).isCloseTo(closed.length().value(), within(2e-3));
      assertThat(sister.stock().value()).isEqualTo(closed.stock().value());
      assertThat(sister.nails().value()).isEqualTo(closed.nails().value());
      assertThat(first(plan).drop().value()).isCloseTo(closed.endOffset().value(), within(2e-3));
      assertThat(last(plan).drop().value()).isCloseTo(closed.endOffset().value(), within(2e-3));
    }
  }

  private static SisterMark first(LevelPlan plan) {
    return plan.marks().get(0);
  }

  private static SisterMark last(LevelPlan plan) {
    return plan.marks().get(plan.marks().size() - 1);
  }

  @Test
  void marks_areAtEveryFootAndAtBothEnds() {
    // 1-1/2 in over 12 ft, by hand: lower than 3/8 between 72 × (1 ± √(3/4)), a lap of 24 in at
    // each
    // end would pass the bearings: from bearing to bearing; 4 × 1.5 × 1/12 × 11/12 at the first
    // foot
    LevelPlan plan = LevelPlan.of("A", List.of(parabola(1.5, 144)), RULES, PASSES);
    assertThat(plan.marks()).hasSize(13);
    assertThat(plan.marks().get(1).along().value()).isEqualTo(1);
    assertThat(plan.marks().get(1).drop().value())
        .isCloseTo(4 * 1.5 * 11 / 144, within(1e-9)); // 0.4583
    assertThat(plan.marks().get(1).marked().value()).isEqualTo(0.4375); // 7/16, the nearest
    assertThat(plan.marks().get(6).marked().value()).isEqualTo(1.5);
    assertThat(last(plan).drop().value()).isZero();
  }

  private static LevelRafter random(Random random) {
    int stations = random.nextInt(1, 9);
    double[] places = new double[stations];
    double[] drops = new double[stations];
    for (int i = 0; i < stations; i++) {
      places[i] = i == 0 ? random.nextInt(0, 10) : places[i - 1] + random.nextInt(8, 30);
      drops[i] = random.nextInt(-4, 20) / 16.0;
    }
    return new LevelRafter(
        TestRafters.rafter("R1", 0, places, drops), Amounts.in(4), Amounts.in(190));
  }

  @Test
  void sister_coversWhateverIsLowAndALapBeyondWithinTheBearings() {
    Random random = new Random(10);
    int sisters = 0;
    for (int i = 0; i < 500; i++) {
      BuildUpParts parts = BuildUpParts.of(random(random).plain(Reading.aside()), PLAIN);
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (double at = 4; at <= 190; at += 0.01) {
        if (parts.profile().at(at) > 0.375 + 1e-9) {
          low = Math.min(low, at);
          high = Math.max(high, at);
        }
      }
      if (low > high) {
        assertThat(parts.sister()).isEmpty();
        continue;
      }
      sisters++;
      Stretch sister = parts.sister().orElseThrow();
      assertThat(sister.from()).isCloseTo(Math.max(4, low - 24), within(0.02));
      assertThat(sister.to()).isCloseTo(Math.min(190, high + 24), within(0.02));
    }
    assertThat(sisters).isGreaterThan(200);
  }

  @Test
  void strips_coverWhateverIsLowOutsideASister() {
    Random random = new Random(11);
    for (int i = 0; i < 300; i++) {
      LevelRafter.Plain rafter = random(random).plain(Reading.aside());
      BuildUpParts parts = BuildUpParts.of(rafter, PLAIN);
      Stretch whole = rafter.wholeLength();
      double low = 0;
      double beside = 0;
      double step = 0.01;
      for (double at = whole.from() + step / 2; at < whole.to(); at += step) {
        double place = at;
        boolean isLow = parts.profile().at(at) > 0.125;
        boolean isSistered =
            parts.sister().filter(s -> place > s.from() && place < s.to()).isPresent();
        low += isLow ? step : 0;
        beside += isLow && !isSistered ? step : 0;
      }
      // scraps under half an inch are not cut
      assertThat(BuildUpParts.length(parts.strips())).isCloseTo(low, within(0.6 * 4));
      assertThat(BuildUpParts.length(parts.beside())).isCloseTo(beside, within(0.6 * 4));
    }
  }

  @Test
  void strips_areNowhereThinnerThanWhatIsMissing() {
    Random random = new Random(12);
    for (int i = 0; i < 200; i++) {
      LevelPlan plan = LevelPlan.of("A", List.of(random(random)), RULES, PASSES);
      for (ShimStrip strip : plan.strips()) {
        assertThat(strip.stations())
            .allSatisfy(
                station -> {
                  double over = station.thickness().value() - station.buildUp().value();
                  assertThat(over).isBetween(-1e-6, 0.0625);
                  assertThat(strip.thickest().value())
                      .isGreaterThanOrEqualTo(station.thickness().value());
                });
        assertThat(strip.nail().value()).isEqualTo(2.5 + strip.thickest().value());
      }
    }
  }

  @Test
  void strip_thatGrowsTooFastIsSaid() {
    // 0 to 3/8 in 12 in is 3/8 in a foot, more than 1/4
    LevelRafter steep =
        new LevelRafter(
            TestRafters.rafter("R1", 0, new double[] {0, 12, 24}, new double[] {0, 0.375, 0}),
            Amounts.in(0),
            Amounts.in(24));
    ShimStrip strip = LevelPlan.of("A", List.of(steep), RULES, PASSES).strips().get(0);
    assertThat(strip.taper().value()).isCloseTo(0.375, within(1e-9));
    assertThat(strip.gradual().value()).isEqualTo(YesNo.NO);
    // lower than 1/8 from 4 in to 20 in
    assertThat(strip.from().value()).isCloseTo(4, within(1e-9));
    assertThat(strip.length().value()).isCloseTo(16 / 12.0, within(1e-9));
  }
}

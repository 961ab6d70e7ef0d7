package sheathwright.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.Amounts.strengthPsf;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.figure.Working;
import sheathwright.loads.LoadCombination.Name;
import sheathwright.published.LoadEdition;

class LoadCombinationsTest {

  @Test
  void eachCombination_namesItsNumbers() {
    LoadCombination snow =
        LoadCombinations.combinations(
                RoofLoads.dead(psf(10)).roofLive(psf(20)).snow(psf(30)),
                strengthPsf(0),
                LoadEdition.ASCE7_16)
            .get(2);
    assertThat(snow.load().name()).isEqualTo("dead_and_snow_psf");
    assertThat(snow.durationFactor().name()).isEqualTo("dead_and_snow_duration_factor");
    assertThat(snow.byDuration().name()).isEqualTo("dead_and_snow_by_duration_psf");
    assertThat(snow).hasToString("dead-and-snow: 40 psf, C_D 1.15");
  }

  @Test
  void aLoadOnRafters_keepsWhatItIsTold() {
    UniformLoad load = UniformLoad.spacing(in(16)).live(psf(20)).dead(psf(12));
    assertThat(load.spacing().value()).isEqualTo(16);
    assertThat(load.live().value()).isEqualTo(20);
    assertThat(load.dead().value()).isEqualTo(12);
    assertThat(new UniformLoad(null, psf(12)).live().refusal().orElseThrow().reason())
        .startsWith("live_psf is missing");
  }

  @Test
  void aConstant_hasItsNumberAndItsSign() {
    var three = LoadArguments.constant("three", 3, Units.RATIO, "3.0", Source.derived("nothing"));
    assertThat(three.value()).isEqualTo(3);
    assertThat(Working.of(three.times(Figure.of(2, Units.RATIO)).as("six", Units.RATIO)))
        .startsWith("six = 3.0 × 2");
  }

  /** C_D of NDS 2018, Table 2.3.2, in the order of the combinations; secondary source. */
  private static final double[] DURATION = {0.9, 1.25, 1.15, 1.6};

  private static CombinedLoads loads(
      double dead, double live, double snow, double uplift, LoadEdition edition) {
    return LoadCombinations.loadCombinations(
        RoofLoads.dead(psf(dead)).roofLive(psf(live)).snow(psf(snow)),
        strengthPsf(uplift),
        edition);
  }

  /** ASCE 7-16 and 7-22, 2.4.1, secondary source, on plain numbers. */
  @ParameterizedTest
  @EnumSource(LoadEdition.class)
  void combinations_areThoseOfTheStandard(LoadEdition edition) {
    double share = edition == LoadEdition.ASCE7_22 ? 0.7 : 1;
    for (double dead : new double[] {0, 7.5, 20, 90}) {
      for (double live : new double[] {0, 12, 20}) {
        for (double snow : new double[] {0, 19, 60}) {
          for (double uplift : new double[] {0, 25, 140}) {
            double[] by = {
              dead, dead + live, dead + share * snow, 0.6 * dead - 0.6 * uplift,
            };
            assertCombined(by, loads(dead, live, snow, uplift, edition));
          }
        }
      }
    }
  }

  private static void assertCombined(double[] expected, CombinedLoads loads) {
    var plain =
        List.of(
            loads.deadAlone(), loads.deadAndRoofLive(), loads.deadAndSnow(), loads.deadAndUplift());
    var byDuration =
        List.of(
            loads.deadAloneByDuration(),
            loads.deadAndRoofLiveByDuration(),
            loads.deadAndSnowByDuration(),
            loads.deadAndUpliftByDuration());
    double most = 0;
    for (int i = 0; i < 4; i++) {
      assertThat(plain.get(i).value()).isCloseTo(expected[i], within(1e-12));
      assertThat(byDuration.get(i).value()).isCloseTo(expected[i] / DURATION[i], within(1e-12));
      most = Math.max(most, Math.abs(expected[i] / DURATION[i]));
    }
    int governs = loads.governsBending().value().ordinal();
    assertThat(Math.abs(expected[governs] / DURATION[governs])).isCloseTo(most, within(1e-12));
  }

  @Test
  void liveLoadAndSnow_areNeverAdded() {
    CombinedLoads both = loads(10, 20, 40, 0, LoadEdition.ASCE7_16);
    assertThat(both.deadAndSnow().value())
        .isEqualTo(loads(10, 0, 40, 0, LoadEdition.ASCE7_16).deadAndSnow().value());
    assertThat(both.deadAndRoofLive().value())
        .isEqualTo(loads(10, 20, 0, 0, LoadEdition.ASCE7_16).deadAndRoofLive().value());
  }

  /** The wood bears 20 psf of crew for a week more easily than 19 psf of snow for two months. */
  @Test
  void snow_mayGovernThoughItIsTheSmallerLoad() {
    CombinedLoads loads = loads(10, 20, 19, 0, LoadEdition.ASCE7_16);
    assertThat(loads.deadAndRoofLive().value()).isGreaterThan(loads.deadAndSnow().value());
    assertThat(loads.governsBending().value()).isEqualTo(Name.DEAD_AND_SNOW);
  }

  @Test
  void eachCombination_governsSomewhere() {
    assertThat(loads(80, 10, 5, 0, LoadEdition.ASCE7_16).governsBending().value())
        .isEqualTo(Name.DEAD_ALONE);
    assertThat(loads(10, 20, 10, 0, LoadEdition.ASCE7_16).governsBending().value())
        .isEqualTo(Name.DEAD_AND_ROOF_LIVE);
    assertThat(loads(10, 20, 40, 0, LoadEdition.ASCE7_16).governsBending().value())
        .isEqualTo(Name.DEAD_AND_SNOW);
    assertThat(loads(5, 12, 0, 200, LoadEdition.ASCE7_16).governsBending().value())
        .isEqualTo(Name.DEAD_AND_UPLIFT);
  }

  @Test
  void combinations_carryTheirNamesAndDurationFactors() {
    var all =
        LoadCombinations.combinations(
            RoofLoads.dead(psf(10)).roofLive(psf(20)).snow(psf(30)),
            strengthPsf(40),
            LoadEdition.ASCE7_22);
    Unit<Pressure> projection = Units.PSF;
    assertThat(all).extracting(each -> each.name().value()).containsExactly(Name.values());
    assertThat(all)
        .extracting(each -> each.durationFactor().value())
        .containsExactly(0.9, 1.25, 1.15, 1.6);
    assertThat(all).extracting(each -> each.load().unit()).containsOnly(projection);
    assertThat(all.get(3)).hasToString("dead-and-uplift: -18 psf, C_D 1.6");
  }
}

package sheathwright.leveling.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import sheathwright.leveling.target.NoTargetException.Clash;
import sheathwright.leveling.target.NoTargetException.Side;

/** Bounds that clash: which ones are named, and by how much they do. */
class TargetClashTest {

  private static final double NONE = TargetReading.UNLIMITED;

  private static NoTargetException clash(Supplier<Object> target) {
    return catchThrowableOfType(NoTargetException.class, target::get);
  }

  /** Eave and ridge may not be built up, and the wood between them has a crown of 1/2 in. */
  private static List<TargetReading> crown(double x) {
    return List.of(
        TargetReading.of("eave", x, 0, 0).within(0, 0),
        TargetReading.of("low", x, 36, -1),
        TargetReading.of("crown", x, 72, 0.5),
        TargetReading.of("ridge", x, 144, 0).within(0, 0.25));
  }

  /** By hand: half of the ridge's 1/4 in reaches the crown, 3/8 in is lacking there. */
  @Test
  void clash_namesTheWoodAndTheBoundsOnBothSidesOfIt() {
    NoTargetException none = clash(() -> TargetPlane.over(crown(0), TargetObjective.TOTAL, NONE));
    assertThat(none.lacking()).isEqualTo(0.375);
    assertThat(none.clashes())
        .containsExactly(
            new Clash(0, "eave", Side.MOST, 0),
            new Clash(2, "crown", Side.WOOD, 0.5),
            new Clash(3, "ridge", Side.MOST, 0.25));
    assertThat(none)
        .hasMessage(
            "nothing straight fits: each of these limits but the wood would have to give 0.375 in: eave, most build-up 0 in; crown, wood at 0.5 in; ridge, most build-up 0.25 in");
  }

  @Test
  void clashOfOneRafter_isNamedByItsPlaceAmongAll() {
    List<TargetReading> readings = new ArrayList<>();
    readings.add(TargetReading.of("another", 0, 0, -3));
    readings.addAll(crown(24));
    readings.add(TargetReading.of("another", 0, 144, -3));
    NoTargetException none = clash(() -> TargetLines.over(readings, TargetObjective.LARGEST, NONE));
    assertThat(none.lacking()).isEqualTo(0.375);
    assertThat(none.clashes()).extracting(Clash::reading).containsExactly(1, 3, 4);
  }

  /** A build-up of 1 in is asked where the cap allows 3/4 in: each gives an eighth. */
  @Test
  void oneReading_canClashWithTheCap() {
    List<TargetReading> readings = List.of(TargetReading.of("a", 0, 0, 0).within(1, NONE));
    NoTargetException none = clash(() -> TargetPlane.over(readings, TargetObjective.TOTAL, 0.75));
    assertThat(none.lacking()).isEqualTo(0.125);
    assertThat(none.clashes())
        .containsExactly(new Clash(0, "a", Side.LEAST, 1), new Clash(0, "a", Side.CAP, 0.75));
  }

  /** All others may be forgotten: the bounds that are named lack as much by themselves. */
  @Test
  void namedBounds_clashByThemselves() {
    int clashes = 0;
    for (int seed = 1; seed <= 60; seed++) {
      Random random = new Random(seed);
      List<TargetReading> readings =
          TargetReadings.bounded(random, TargetReadings.sagged(random, 4, 6));
      double cap = 0.5;
      NoTargetException none = clash(() -> TargetPlane.over(readings, TargetObjective.TOTAL, cap));
      if (none != null) {
        clashes++;
        assertThat(none.clashes()).hasSizeBetween(2, 4);
        List<TargetReading> named =
            none.clashes().stream().map(each -> alone(each, readings, cap)).toList();
        NoTargetException again =
            clash(() -> TargetPlane.over(named, TargetObjective.LARGEST, NONE));
        assertThat(again.lacking()).isCloseTo(none.lacking(), within(1e-6));
      }
    }
    assertThat(clashes).isGreaterThan(10);
  }

  private static TargetReading alone(Clash clash, List<TargetReading> readings, double cap) {
    TargetReading reading = readings.get(clash.reading());
    return switch (clash.side()) {
      case WOOD -> reading.within(0, NONE);
      case LEAST -> reading.within(reading.least(), NONE);
      case MOST -> reading.within(0, reading.most());
      case CAP -> reading.within(0, cap);
    };
  }
}

package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.figure.RefusedException;

/** Planes made up with a known error in them; the same planes each time. */
class StringReadingsTest {

  private static final int RAFTERS = 9;
  private static final int STATIONS = 7;

  /** A sag of 1-5/8 in both ways, each reading good to a sixteenth. */
  private static DoubleBinaryOperator sagged(Random random) {
    return (x, y) -> {
      double across = x * (16 * 24 - x) / (8.0 * 24 * 8 * 24);
      double along = y * (144 - y) / (72.0 * 72);
      return Math.rint(16 * (1.625 * across * along + random.nextDouble(-0.06, 0.06))) / 16;
    };
  }

  private static List<StringReading> readings(DoubleBinaryOperator drop) {
    List<StringReading> readings = new ArrayList<>();
    for (int rafter = 0; rafter < RAFTERS; rafter++) {
      for (int station = 0; station < STATIONS; station++) {
        double x = 24 * rafter;
        double y = 24 * station;
        readings.add(
            StringReading.ofDrop(
                "A-" + (rafter + 1),
                Amounts.in(x),
                Amounts.in(y),
                Amounts.in(drop.applyAsDouble(x, y))));
      }
    }
    return readings;
  }

  private static StringReadings judged(List<StringReading> readings) {
    return StringReadings.of("A", readings, SuspicionRules.usual());
  }

  @Test
  void suspects_areNoneOnPlanesThatSagEvenly() {
    Random random = new Random(1);
    for (int i = 0; i < 100; i++) {
      assertThat(judged(readings(sagged(random))).suspects()).isEmpty();
    }
  }

  @Test
  void suspects_areTheOneReadingThatIsWrongByAnInchAndAHalf() {
    Random random = new Random(2);
    for (int i = 0; i < 300; i++) {
      List<StringReading> readings = readings(sagged(random));
      int wrong = random.nextInt(readings.size());
      StringReading right = readings.get(wrong);
      double error = random.nextBoolean() ? 1.5 : -1.5;
      readings.set(
          wrong,
          StringReading.ofDrop(
              right.rafter(),
              right.center(),
              right.up(),
              Amounts.in(right.drop().value() + error)));
      StringReadings judged = judged(readings);
      assertThat(judged.suspects())
          .as("%s at %s", right.rafter(), right.up())
          .singleElement()
          .satisfies(
              suspect -> {
                assertThat(suspect.reading()).isSameAs(readings.get(wrong));
                assertThat(suspect.departure().value() * error).isGreaterThan(0.25);
                assertThat(suspect.toString()).contains("its neighbors say");
              });
      assertThat(judged.readings()).hasSize(readings.size());
      assertThat(judged.suspectCount().value()).isEqualTo(1);
    }
  }

  @Test
  void suspects_areBothOfTwoWrongReadingsThatAreNotNextToEachOther() {
    Random random = new Random(3);
    for (int i = 0; i < 100; i++) {
      List<StringReading> readings = readings(sagged(random));
      int left = STATIONS * random.nextInt(1, 4) + random.nextInt(1, STATIONS - 1);
      int right = STATIONS * random.nextInt(5, RAFTERS - 1) + random.nextInt(1, STATIONS - 1);
      for (int wrong : new int[] {left, right}) {
        StringReading was = readings.get(wrong);
        readings.set(
            wrong,
            StringReading.ofDrop(
                was.rafter(), was.center(), was.up(), Amounts.in(was.drop().value() + 1)));
      }
      assertThat(judged(readings).suspects())
          .extracting(JudgedReading::reading)
          .containsExactly(readings.get(left), readings.get(right));
    }
  }

  @Test
  void suspects_areNotRaftersThatSagAlone() {
    // Smooth along its length, however far from its neighbors.
    List<StringReading> readings =
        readings((x, y) -> x == 96 ? 2 * y * (144 - y) / (72.0 * 72) : 0);
    assertThat(judged(readings).suspects()).isEmpty();
  }

  /**
   * Five stations a rafter, three rafters deep in one place, as crews find them; all of it true.
   */
  @Test
  void suspects_areNotDeepPlacesReadAtFewStations() {
    double[] middles = {0, 0.125, 0.375, 0.75, 1.125, 0.875, 0.5, 0.25, 0};
    double[] shape = {0, 0.8, 1, 0.65, 0};
    List<StringReading> readings = new ArrayList<>();
    for (int rafter = 0; rafter < middles.length; rafter++) {
      for (int station = 0; station < shape.length; station++) {
        readings.add(
            StringReading.ofDrop(
                "A-" + (rafter + 1),
                Amounts.in(24 * rafter),
                Amounts.in(36 * station),
                Amounts.in(middles[rafter] * shape[station])));
      }
    }
    assertThat(judged(readings).suspects()).isEmpty();
  }

  @Test
  void suspects_areNotDipsOverAllRafters() {
    // Smooth across, however sharp along: a purlin that has dropped.
    assertThat(judged(readings((x, y) -> y == 72 ? 1.5 : 0)).suspects()).isEmpty();
  }

  @Test
  void suspects_ofOneStationARafterAreJudgedAcross() {
    // the invented cottage, plane A: nobody contradicts; with 3/8 read as 3-3/8 one is contradicted
    List<StringReading> cottage = cottage(TestCottage.A);
    assertThat(judged(cottage).suspects()).isEmpty();
    double[] misread = TestCottage.A.clone();
    misread[1] = 3.375;
    assertThat(judged(cottage(misread)).suspects())
        .extracting(suspect -> suspect.reading().rafter())
        .containsExactly("A-2");
  }

  private static List<StringReading> cottage(double[] drops) {
    List<StringReading> readings = new ArrayList<>();
    for (int i = 0; i < drops.length; i++) {
      readings.add(
          StringReading.ofDrop(
              "A-" + (i + 1), Amounts.in(24 * i), Amounts.in(72), Amounts.in(drops[i])));
    }
    return readings;
  }

  @Test
  void readings_areKeptWhereNobodyCanContradict() {
    StringReadings one = judged(cottage(new double[] {3}));
    assertThat(one.suspects()).isEmpty();
    assertThat(one.readings())
        .singleElement()
        .satisfies(each -> assertThat(each.departure().value()).isZero());
    assertThat(one.profiles()).hasSize(1);
  }

  @Test
  void readings_refuseOnePlaceReadTwice() {
    List<StringReading> twice = new ArrayList<>(cottage(new double[] {1}));
    twice.addAll(cottage(new double[] {2}));
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> judged(twice))
        .withMessageContaining("two stations");
  }
}

package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.lbPerFt;
import static sheathwright.figure.Amounts.number;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Labels;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;

/** What a survey calls its numbers, what its lists hold, and what it refuses. */
class StringNamesTest {

  private static void assertRefused(Runnable wrong, String reason) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(wrong::run)
        .withMessageContaining(reason);
  }

  private static List<String> cells(Roll roll, String column) {
    return roll.cellsOf(column).stream().map(Traced::plain).toList();
  }

  private static StringReadings misread() {
    double[] drops = TestCottage.A.clone();
    drops[1] = 3.375;
    return StringReadings.of(
        "Plane A",
        java.util.stream.IntStream.range(0, drops.length)
            .mapToObj(i -> StringReading.ofDrop("A-" + (i + 1), in(24 * i), in(72), in(drops[i])))
            .toList(),
        SuspicionRules.usual());
  }

  /** By hand: the neighbors of the second rafter read 0 and 5/8, so 5/16 is expected there. */
  @Test
  void aSuspectReading_standsInTheListWithAllThatTellsAgainstIt() {
    StringReadings judged = misread();
    assertThat(judged.plane()).isEqualTo("Plane A");
    assertThat(judged.roll().name()).isEqualTo("readings_on_plane_a");
    assertThat(judged.suspectCount().name()).isEqualTo("suspect_readings_on_plane_a");
    assertThat(judged)
        .asString()
        .startsWith(
            "15 readings on 15 rafters of plane Plane A, 1 to recheck\nrafter A-2 at 72 in:")
        .contains("3-3/8 in below the string, its neighbors say 5/16 in: recheck it");
    assertThat(judged.readings().get(2))
        .hasToString("rafter A-3 at 72 in: 5/8 in below the string");
    JudgedReading wrong = judged.suspects().get(0);
    assertThat(wrong.expected().value()).isEqualTo(0.3125);
    assertThat(wrong.departure().value()).isEqualTo(3.0625);
    assertThat(wrong.doubt().value()).isEqualTo(1);
    assertThat(wrong.beside().value()).isEqualTo(0.625);
    assertThat(Solution.behind(wrong.expected()).orElseThrow().name())
        .isEqualTo("neighbors_on_plane_a");
    Roll roll = judged.roll();
    assertThat(cells(roll, "rafter")).startsWith("A-1", "A-2");
    assertThat(cells(roll, "center_in")).startsWith("0", "24");
    assertThat(cells(roll, "up_in")).startsWith("72", "72");
    assertThat(cells(roll, "reading_in")).startsWith("0", "3.375");
    assertThat(cells(roll, "place_ft")).startsWith("0", "0");
    assertThat(cells(roll, "string_sag_in")).startsWith("0", "0");
    assertThat(cells(roll, "drop_in")).startsWith("0", "3.375");
    assertThat(cells(roll, "expected_in").get(1)).isEqualTo("0.3125");
    assertThat(cells(roll, "departure_in").get(1)).isEqualTo("3.0625");
    assertThat(cells(roll, "doubt").get(1)).isEqualTo("1");
    assertThat(cells(roll, "spread_in").get(1)).isEqualTo(wrong.spread().plain());
    assertThat(cells(roll, "beside_in").get(1)).isEqualTo("0.625");
    assertThat(cells(roll, "usual_in").get(1)).isEqualTo(wrong.usual().plain());
    assertThat(cells(roll, "allowed_in").get(1)).isEqualTo(wrong.allowed().plain());
    assertThat(cells(roll, "suspect")).startsWith("no", "yes", "no");
    assertThat(cells(roll, "suspects")).startsWith("0", "1", "0");
  }

  @Test
  void readings_areRefusedWithTheirRafter() {
    assertRefused(
        () -> StringReadings.of("A", List.of(), SuspicionRules.usual()),
        "plane A has no reading; read every rafter");
    List<StringReading> moved =
        List.of(
            StringReading.ofDrop("A-1", in(0), in(10), in(1)),
            StringReading.ofDrop("A-1", in(24), in(20), in(1)));
    assertRefused(
        () -> StringReadings.of("A", moved, SuspicionRules.usual()),
        "rafter A-1 has its center at 0 in and again at 24 in");
    List<StringReading> back = List.of(moved.get(1), moved.get(0));
    assertRefused(
        () -> StringReadings.of("A", back, SuspicionRules.usual()),
        "rafter A-1 has its center at 24 in and again at 0 in");
    assertRefused(
        () -> new RafterProfile("A-1", in(0), List.of()), "rafter A-1 has no station; read");
    assertRefused(
        () -> TestRafters.rafter("A-1", 0, new double[] {10, 0, 10}, new double[3]),
        "rafter A-1 has two stations at 10 in");
    StringLine line = new StringLine(in(12), ft(20), in(0.75), lbPerFt(0.0015), lb(20));
    assertRefused(
        () -> line.read("A-1", in(0), ft(22), in(1)),
        "rafter A-1 was read at 22' 0\", past the string, which starts at 1' 0\" and is 20' 0\"");
    assertRefused(
        () -> new StringLine(ft(201), ft(20), in(0.75), lbPerFt(0.0015), lb(20)).start().value(),
        "string_start_ft is 201");
  }

  /** At both ends of the string the wood is as high as the block says. */
  @Test
  void aString_isReadFromItsOneEndToItsOther() {
    StringLine line = new StringLine(in(12), ft(20), in(0.75), lbPerFt(0.0015), lb(20));
    assertThat(line.read("A-1", in(0), in(12), in(1)).drop().value()).isEqualTo(0.25);
    assertThat(line.read("A-1", in(0), ft(21), in(1)).drop().value()).isEqualTo(0.25);
    assertThat(line.start().value()).isEqualTo(1);
  }

  @Test
  void aRafter_namesWhatItIsSolvedFor() {
    RafterProfile rafter =
        TestRafters.rafter("A-1", 3, new double[] {60, 0}, new double[] {0.5, 0.25});
    assertThat(Labels.of(rafter::plain))
        .containsExactly(
            "center of rafter A-1",
            "station of rafter A-1 at 0 in",
            "rafter A-1 at 0 in",
            "station of rafter A-1 at 60 in",
            "rafter A-1 at 60 in");
    assertThat(Labels.of(new LevelRafter(rafter, in(0), in(60))::plain))
        .endsWith("lower bearing of rafter A-1", "upper bearing of rafter A-1");
    assertThat(Labels.of(FlatnessLimit.usual().get(0)::window)).isEmpty();
    assertThat(Labels.of(SuspicionRules.usual()::plain))
        .containsExactly(
            "how many times the usual deviation is suspect",
            "the deviation below which no reading is suspect",
            "the part of the drops beside it that a reading may deviate");
    assertRefused(
        () -> new LevelRafter(rafter, in(60), in(60)),
        "rafter A-1 has its upper bearing at 60 in, not above its lower one at 60 in");
  }

  /** By hand: a plane that falls evenly, one rafter of which was read in its middle only. */
  @Test
  void across_takesOnlyRaftersThatReachSoFar_inWhateverOrderTheyWereGiven() {
    RafterProfile left = TestRafters.rafter("R1", 0, new double[] {0, 100}, new double[] {0, 5});
    RafterProfile some =
        TestRafters.rafter("R2", 24, new double[] {10, 70}, new double[] {0.5, 3.5});
    RafterProfile right = TestRafters.rafter("R3", 48, new double[] {0, 100}, new double[] {0, 5});
    for (List<RafterProfile> rafters :
        List.of(List.of(left, some, right), List.of(some, right, left))) {
      FlatnessFinding across =
          FlatnessSurvey.of("A", rafters, FlatnessLimit.usual()).findings().get(1);
      assertThat(across.place().plain()).isEqualTo("straight");
    }
    assertThat(FlatnessLimit.usual().get(0).window().name()).isEqualTo("window_of_10_ft");
    assertThat(FlatnessLimit.usual().get(0).allowed().name()).isEqualTo("allowed_in_10_ft_in");
    assertRefused(
        () ->
            StringLines.stringSag(
                    TightString.length(ft(12)).weight(lbPerFt(0.0015)).tension(lb(20)), ft(13))
                .value(),
        "the string ends at 12' 0\", before the place at 13' 0\"");
    assertRefused(
        () ->
            Sags.chordDeviation(
                    Straightedge.of(
                        LinePlace.at(in(60)).drop(in(0)), LinePlace.at(in(0)).drop(in(0))),
                    LinePlace.at(in(30)).drop(in(0)))
                .value(),
        "the last end, at 0 in, is not beyond the first, at 60 in");
  }

  /** The wood may be read beyond its bearings, or not so far; two rafters lie an inch apart. */
  @Test
  void aRafter_goesAsFarAsItIsReadOrBears() {
    RafterProfile read =
        TestRafters.rafter("A-1", 5, new double[] {0, 60, 120}, new double[] {0, 1, 0});
    assertThat(
            new LevelRafter(read, in(12), in(100))
                .plain(sheathwright.figure.Reading.aside())
                .wholeLength())
        .isEqualTo(new Profile.Stretch(0, 120));
    assertThat(
            new LevelRafter(read, in(-6), in(130))
                .plain(sheathwright.figure.Reading.aside())
                .wholeLength())
        .isEqualTo(new Profile.Stretch(-6, 130));
    RafterProfile next = TestRafters.rafter("A-2", 6, new double[] {0}, new double[] {0});
    assertThat(new PlaneProfiles("A", List.of(read, next)).rafters()).hasSize(2);
    RafterProfile same = TestRafters.rafter("A-3", 5.5, new double[] {0}, new double[] {0});
    assertRefused(
        () -> new PlaneProfiles("A", List.of(same, read)), "rafters A-1 and A-3 of plane A");
    assertRefused(
        () -> new StringLine(in(0), ft(20), in(999), lbPerFt(0.0015), lb(20)).block().value(),
        "block_in is 999");
  }

  /** The rule: 5 times the spread, 1/4 at least; 0.4 of what lies beside, if that is more. */
  @Test
  void whatIsAllowed_followsTheSpread() {
    double[] drops = {0, 0.2, 0, 0.2, 0, 0.2, 0, 0.2, 0, 0.2};
    StringReadings judged =
        StringReadings.of(
            "A",
            java.util.stream.IntStream.range(0, drops.length)
                .mapToObj(i -> StringReading.ofDrop("A-" + i, in(24 * i), in(72), in(drops[i])))
                .toList(),
            SuspicionRules.usual());
    JudgedReading fifth = judged.readings().get(4);
    assertThat(fifth.expected().value()).isEqualTo(0.2);
    assertThat(fifth.spread().value()).isEqualTo(0.2);
    assertThat(fifth.usual().value()).isEqualTo(1);
    assertThat(fifth.allowed().value()).isEqualTo(1);
    assertThat(misread().suspects().get(0).usual().value())
        .isEqualTo(Math.max(0.25, 5 * misread().suspects().get(0).spread().value()));
  }

  @Test
  void flatness_namesWhereItIsWorst() {
    List<RafterProfile> low =
        TestRafters.grid(
            new double[] {0, 24, 48},
            new double[] {0, 60, 120},
            (x, y) -> x == 24 && y == 60 ? 1 : 0);
    FlatnessSurvey survey = FlatnessSurvey.of("Plane A", low, FlatnessLimit.usual());
    FlatnessFinding along = survey.findings().get(0);
    FlatnessFinding across = survey.findings().get(1);
    assertThat(along.deviation().name()).startsWith("plane_a_along_in_10").endsWith("deviation_in");
    assertThat(across.deviation().name()).startsWith("plane_a_across_in_10");
    assertThat(along.place().name()).startsWith("plane_a_along_in_10").endsWith("place");
    assertThat(along.deviation().name()).matches("[a-z0-9_]+");
    assertThat(along.check().demand().name()).startsWith("plane_a_along_in_10").endsWith("size_in");
    FlatnessLimit inInches = new FlatnessLimit("own", in(120), in(0.25));
    assertThat(
            FlatnessSurvey.of("Plane A", low, List.of(inInches))
                .findings()
                .get(0)
                .deviation()
                .name())
        .isEqualTo(along.deviation().name());
    assertThat(along.check().ratio().name()).startsWith("plane_a_along_in_10").endsWith("ratio");
    assertThat(Solution.behind(along.deviation()).orElseThrow().name())
        .isEqualTo("flatness_of_plane_a");
    assertThat(along).hasToString(along.check() + "; " + along.place());
    Roll roll = survey.roll();
    assertThat(roll.name()).isEqualTo("flatness_on_plane_a");
    assertThat(cells(roll, "limit"))
        .containsExactly("1/4 in in 10 ft along the rafters", "1/4 in in 10 ft across the rafters");
    assertThat(cells(roll, "deviation_in")).containsExactly("1", "1");
    assertThat(cells(roll, "size_in")).containsExactly("1", "1");
    assertThat(cells(roll, "allowed_in")).containsExactly("0.25", "0.25");
    assertThat(cells(roll, "ratio")).containsExactly("4", "4");
    assertThat(cells(roll, "ok")).containsExactly("no", "no");
    assertThat(cells(roll, "place").get(0)).startsWith("rafter R2, low at 5.0 ft");
    assertThat(FlatnessLimit.engineer().window().value()).isEqualTo(8);
  }

  /** By hand: 9/10 in over 5 ft is more of its span than 1 in over 10 ft; a hump is no sag. */
  @Test
  void theWorstSag_isThatOfTheGreatestPartOfItsSpan() {
    LevelRafter ten =
        new LevelRafter(
            TestRafters.rafter("A-1", 0, new double[] {0, 60, 120}, new double[] {0, 1, 0}),
            in(0),
            in(120));
    LevelRafter five =
        new LevelRafter(
            TestRafters.rafter("A-2", 24, new double[] {0, 30, 60}, new double[] {0, 0.9, 0}),
            in(0),
            in(60));
    LevelRafter hump =
        new LevelRafter(
            TestRafters.rafter("A-3", 48, new double[] {0, 30, 60}, new double[] {-1, -2, -1}),
            in(0),
            in(60));
    SagSurvey survey = SagSurvey.of("Plane A", List.of(ten, five, hump), number(240));
    assertThat(survey.rafter().plain()).isEqualTo("A-2");
    assertThat(survey.rafter().name()).isEqualTo("worst_rafter_of_plane_a");
    assertThat(survey.roll().name()).isEqualTo("sags_on_plane_a");
    assertThat(cells(survey.roll(), "rafter")).containsExactly("A-1", "A-2", "A-3");
    assertThat(cells(survey.roll(), "sag_in")).containsExactly("1", "0.9", "0");
    assertThat(cells(survey.roll(), "span_ft")).containsExactly("10", "5", "5");
    assertThat(Solution.behind(survey.rafter()).orElseThrow().name()).isEqualTo("sags_of_plane_a");
    assertRefused(
        () -> SagSurvey.of("A", List.of(), number(240)), "plane A has no rafter to survey");
    LevelRafter raised =
        new LevelRafter(
            TestRafters.rafter("A-4", 72, new double[] {12, 60, 132}, new double[] {0, 1, 0}),
            in(12),
            in(132));
    assertThat(cells(SagSurvey.of("A", List.of(raised), number(240)).roll(), "span_ft"))
        .containsExactly("10");
    assertThat(ten.plain(sheathwright.figure.Reading.aside()).wholeLength())
        .isEqualTo(new Profile.Stretch(0, 120));
  }
}

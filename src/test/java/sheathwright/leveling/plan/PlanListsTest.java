package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.figure.Labels;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.Profile.Stretch;
import sheathwright.leveling.string.TestRafters;
import sheathwright.wood.LumberSize;

/**
 * By hand: a rafter of 20 ft that wants 1 in in its middle and nothing at its ends is 1/8 in low or
 * more from 15 to 225 in, 3/8 in or more from 45 to 195; a sister laps 2 ft, so from 21 to 219 in.
 */
class PlanListsTest {

  private static final LevelRules RULES =
      LevelRules.usual(LumberSize.SIZE_2X6, LumberSize.SIZE_2X6);
  private static final LevelPlan PLAN =
      LevelPlan.of(
          "Plane A",
          List.of(rafter("A-1", 0, 1), rafter("A-2", 24, 0.25), rafter("A-3", 48, 0)),
          RULES,
          FramingAnswer.of(Amounts.number(0.7)));

  private static LevelRafter rafter(String name, double center, double middle) {
    return new LevelRafter(
        TestRafters.rafter(name, center, new double[] {0, 120, 240}, new double[] {0, middle, 0}),
        in(0),
        in(240));
  }

  private static BuildUpParts parts(double middle) {
    return BuildUpParts.of(
        rafter("A-1", 0, middle).plain(Reading.aside()), RULES.plain(Reading.aside()));
  }

  @Test
  void aSister_coversWhatIsDeepAndItsLaps_stripsTheRest() {
    BuildUpParts deep = parts(1);
    assertThat(deep.sister()).contains(new Stretch(21, 219));
    assertThat(deep.sisterLength()).isEqualTo(198);
    assertThat(deep.strips()).containsExactly(new Stretch(15, 225));
    assertThat(deep.beside()).containsExactly(new Stretch(15, 21), new Stretch(219, 225));
    assertThat(BuildUpParts.length(deep.beside())).isEqualTo(12);
    assertThat(deep.knots(new Stretch(15, 225))).containsExactly(15.0, 120.0, 225.0);
    assertThat(deep.taper(new Stretch(15, 225))).as("1 in over 10 ft").isCloseTo(0.1, within(1e-9));
    assertThat(deep.thickest(new Stretch(15, 225))).isEqualTo(1);
    assertThat(deep.thickest(new Stretch(15, 21))).isCloseTo(0.175, within(1e-9));
  }

  @Test
  void aShallowRafter_hasStripsAlone_andNoneThatIsTooShort() {
    BuildUpParts shallow = parts(0.25);
    assertThat(shallow.sister()).isEmpty();
    assertThat(shallow.sisterLength()).isZero();
    assertThat(shallow.strips()).containsExactly(new Stretch(60, 180));
    assertThat(shallow.beside()).containsExactly(new Stretch(60, 180));
    assertThat(parts(0.1252).strips()).as("under half an inch long").isEmpty();
  }

  private static <T> void assertColumn(
      Roll roll, String column, List<T> items, Function<T, Traced> part) {
    assertThat(roll.cellsOf(column).stream().map(Traced::plain).toList())
        .as(column)
        .isEqualTo(items.stream().map(part).map(Traced::plain).toList());
  }

  private static List<String> cells(Roll roll, String column) {
    return roll.cellsOf(column).stream().map(Traced::plain).toList();
  }

  @Test
  void theListOfRafters_holdsEachPartOfThem() {
    Roll roll = PLAN.roll();
    List<PlannedRafter> rafters = PLAN.rafters();
    assertThat(roll.name()).isEqualTo("leveling_of_plane_a");
    assertThat(cells(roll, "rafter")).containsExactly("A-1", "A-2", "A-3");
    assertThat(cells(roll, "action")).containsExactly("sister", "shim", "leave");
    assertThat(cells(roll, "leaves")).containsExactly("0", "0", "1");
    assertThat(cells(roll, "shimmed")).containsExactly("0", "1", "0");
    assertThat(cells(roll, "stops")).containsExactly("0", "0", "0");
    assertThat(cells(roll, "planed")).containsExactly("0", "0", "0");
    assertThat(cells(roll, "high_stops")).containsExactly("0", "0", "0");
    assertThat(cells(roll, "sisters")).containsExactly("1", "0", "0");
    assertThat(cells(roll, "greatest_in")).containsExactly("1", "0.25", "0");
    assertThat(cells(roll, "covered_ft").get(0)).isEqualTo("16.5");
    assertThat(cells(roll, "stock_ft")).containsExactly("18", "0", "0");
    assertThat(cells(roll, "strips")).containsExactly("1", "1", "0");
    assertThat(cells(roll, "shims")).containsExactly("2", "1", "0");
    assertThat(cells(roll, "strip_beside_ft").get(0)).isEqualTo("1");
    assertThat(cells(roll, "nails").get(0)).as("2 x (194 ÷ 12 up and 1)").isEqualTo("36");
    assertColumn(roll, "center_in", rafters, PlannedRafter::center);
    assertColumn(roll, "least_in", rafters, PlannedRafter::least);
    assertColumn(roll, "high_part", rafters, PlannedRafter::highPart);
    assertColumn(roll, "up_to_shim", rafters, PlannedRafter::upToShim);
    assertColumn(roll, "deep_part", rafters, PlannedRafter::deepPart);
    assertColumn(roll, "length_ft", rafters, each -> each.sister().length());
    assertColumn(roll, "stock_wanted_ft", rafters, each -> each.sister().wanted());
    assertColumn(roll, "stock_sold_ft", rafters, each -> each.sister().sold());
    assertColumn(roll, "nails_wanted", rafters, each -> each.sister().nailsWanted());
    assertColumn(roll, "nails_each", rafters, each -> each.sister().nails());
    assertColumn(roll, "next_shorter_ft", rafters, each -> each.sister().shorter());
    assertColumn(roll, "lacking_in", rafters, each -> each.sister().lacking());
    assertColumn(roll, "near_miss_in", rafters, each -> each.sister().nearMiss());
    assertColumn(roll, "lap_if_sistered_in", rafters, each -> each.sister().lapIfSistered());
    assertColumn(roll, "lap_in", rafters, each -> each.sister().lap());
    assertColumn(roll, "strip_ft", rafters, each -> each.shims().stripLength());
    assertColumn(roll, "strips_beside", rafters, each -> each.shims().besideStrips());
    assertColumn(roll, "shims_beside", rafters, each -> each.shims().ifSistered());
    assertColumn(roll, "shim_beside_ft", rafters, each -> each.shims().lengthIfSistered());
    assertColumn(roll, "shim_ft", rafters, each -> each.shims().length());
    assertThat(rafters.get(0))
        .hasToString("rafter A-1: sister, if the first line of its plan allows it");
    assertThat(rafters.get(0).sister())
        .hasToString(
            "sister 16' 6\" long from a 18' 0\" stick, if the first line of its plan allows it");
  }

  /** A mark at each foot of the sister and at its end, to a sixteenth: at 21 in 0.175 is 3/16. */
  @Test
  void marks_standAFootApart_andAtTheEnd() {
    assertThat(PLAN.marks()).hasSize(18);
    SisterMark first = PLAN.marks().get(0);
    assertThat(first.up().value()).isEqualTo(21);
    assertThat(first.drop().value()).isCloseTo(0.175, within(1e-9));
    assertThat(first.marked().value()).isEqualTo(0.1875);
    assertThat(PLAN.marks().get(1).up().value()).isEqualTo(33);
    assertThat(PLAN.marks().get(17).along().value()).isEqualTo(16.5);
    assertThat(first).hasToString(first.along() + " along: " + first.marked());
    Roll roll = PLAN.marksRoll();
    assertThat(roll.name()).isEqualTo("sister_marks_of_plane_a");
    assertThat(cells(roll, "rafter")).containsOnly("A-1");
    assertColumn(roll, "along_ft", PLAN.marks(), SisterMark::along);
    assertColumn(roll, "up_in", PLAN.marks(), SisterMark::up);
    assertColumn(roll, "drop_in", PLAN.marks(), SisterMark::drop);
    assertColumn(roll, "mark_in", PLAN.marks(), SisterMark::marked);
  }

  /** By hand: 1/4 in in the middle of 10 ft of strip; its nails reach 1/4 in further. */
  @Test
  void strips_areListedWithTheirStations() {
    assertThat(PLAN.strips()).hasSize(3);
    ShimStrip strip = PLAN.strips().get(2);
    assertThat(strip.rafter()).isEqualTo("A-2");
    assertThat(strip.from().value()).isEqualTo(60);
    assertThat(strip.to().value()).isEqualTo(180);
    assertThat(strip.length().value()).isEqualTo(10);
    assertThat(strip.greatest().value()).isEqualTo(0.25);
    assertThat(strip.thickest().value()).isEqualTo(0.25);
    assertThat(strip.nail().value()).isEqualTo(2.75);
    assertThat(strip.gradual().plain()).isEqualTo("yes");
    assertThat(strip.thin().plain()).isEqualTo("no");
    assertThat(PLAN.strips().get(0).thin().plain()).isEqualTo("yes");
    assertThat(strip)
        .hasToString(
            "strip on rafter A-2 from 60 in to 180 in, if the first line of its plan allows it");
    assertThat(strip.stations()).hasSize(3);
    assertThat(strip.stations().get(1)).hasToString("1/4 in at 120 in");
    Roll roll = PLAN.stripsRoll();
    assertThat(roll.name()).isEqualTo("shim_strips_of_plane_a");
    assertThat(cells(roll, "rafter")).containsExactly("A-1", "A-1", "A-2");
    assertColumn(roll, "from_in", PLAN.strips(), ShimStrip::from);
    assertColumn(roll, "to_in", PLAN.strips(), ShimStrip::to);
    assertColumn(roll, "strip_ft", PLAN.strips(), ShimStrip::length);
    assertColumn(roll, "greatest_in", PLAN.strips(), ShimStrip::greatest);
    assertColumn(roll, "thickest_in", PLAN.strips(), ShimStrip::thickest);
    assertColumn(roll, "taper_in_12", PLAN.strips(), ShimStrip::taper);
    assertColumn(roll, "gradual", PLAN.strips(), ShimStrip::gradual);
    assertColumn(roll, "thin", PLAN.strips(), ShimStrip::thin);
    assertColumn(roll, "nail_in", PLAN.strips(), ShimStrip::nail);
    Roll thick = PLAN.thicknessesRoll();
    List<ShimStrip.Station> stations =
        PLAN.strips().stream().flatMap(each -> each.stations().stream()).toList();
    assertThat(thick.name()).isEqualTo("shim_thicknesses_of_plane_a");
    assertThat(cells(thick, "rafter")).endsWith("A-2", "A-2", "A-2");
    assertColumn(thick, "up_in", stations, ShimStrip.Station::up);
    assertColumn(thick, "build_up_in", stations, ShimStrip.Station::buildUp);
    assertColumn(thick, "thickness_in", stations, ShimStrip.Station::thickness);
  }

  @Test
  void totalsAndDecisions_haveThePlanesName() {
    LevelTotals totals = PLAN.totals();
    assertThat(totals.sisters().name()).isEqualTo("sisters_of_plane_a");
    assertThat(totals.shimmed().name()).isEqualTo("shimmed_rafters_of_plane_a");
    assertThat(totals.shims().name()).isEqualTo("shims_of_plane_a");
    assertThat(totals.left().name()).isEqualTo("left_rafters_of_plane_a");
    assertThat(totals.planed().name()).isEqualTo("planed_rafters_of_plane_a");
    assertThat(totals.trussStops().name()).isEqualTo("truss_stops_of_plane_a");
    assertThat(totals.nails().name()).isEqualTo("sister_nails_of_plane_a");
    assertThat(totals.stock().name()).isEqualTo("sister_stock_of_plane_a_ft");
    assertThat(totals.shimLength().name()).isEqualTo("shim_strips_of_plane_a_ft");
    assertThat(totals.shimLength().value()).isEqualTo(11);
    assertThat(totals.smallestLap().name()).isEqualTo("smallest_lap_of_plane_a_in");
    assertThat(PLAN.lap().ratio().name()).isEqualTo("lap_ratio_of_plane_a");
    assertThat(PLAN.decision().name()).isEqualTo("level_decision_of_plane_a");
    assertThat(PLAN.trussDecision().name()).isEqualTo("truss_decision_of_plane_a");
    assertThat(Solution.behind(PLAN.rafters().get(0).greatest()).orElseThrow().name())
        .isEqualTo("level_plan_of_plane_a");
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> LevelPlan.of("A", List.of(), RULES, PLAN.framing()))
        .withMessage("plane A has no rafter to level");
  }

  @Test
  void rulesAndPieces_nameWhatTheyAreSolvedFor() {
    assertThat(Labels.of(RULES::plain))
        .containsExactly(
            "the most deviation that is left alone",
            "the most that a shim strip makes up",
            "truss",
            "the drop that needs no sister",
            "how far sisters run past the drop",
            "full bearing");
    assertThat(Labels.of(reading -> LevelPiece.of(PLAN, reading)))
        .startsWith("the sister of rafter A-1", "the sister of rafter A-2");
    assertThat(LevelPiece.of(PLAN, Reading.aside()))
        .containsExactly(new LevelPiece("A-1 sister", 198));
  }

  /** By hand: one stick of 18 ft at $30 and two strips and one at $2, an hour and half hours. */
  @Test
  void theCost_isListedByStick() {
    LevelPrices prices =
        new LevelPrices(
            List.of(
                new LevelPrices.Stick(Amounts.ft(16), Amounts.usdPerPiece(25)),
                new LevelPrices.Stick(Amounts.ft(18), Amounts.usdPerPiece(30))),
            Amounts.usdPerPiece(2),
            Amounts.hoursPerPiece(1),
            Amounts.hoursPerPiece(0.5),
            Amounts.usdPerHour(40));
    LevelCost cost = LevelCost.of(PLAN, prices);
    assertThat(cost.sisters().value()).isEqualTo(30);
    assertThat(cost.shims().value()).isEqualTo(6);
    assertThat(cost.hours().value()).isEqualTo(2.5);
    assertThat(cost.labor().value()).isEqualTo(100);
    assertThat(cost.total().value()).isEqualTo(136);
    assertThat(cost.sisters().name()).isEqualTo("sisters_of_plane_a_usd");
    assertThat(cost.shims().name()).isEqualTo("shims_of_plane_a_usd");
    assertThat(cost.hours().name()).isEqualTo("leveling_of_plane_a_h");
    assertThat(cost.labor().name()).isEqualTo("leveling_labor_of_plane_a_usd");
    assertThat(cost.total().name()).isEqualTo("leveling_of_plane_a_usd");
    Roll sticks = cost.sticks();
    assertThat(sticks.name()).isEqualTo("sister_sticks_of_plane_a");
    assertThat(cells(sticks, "rafter")).containsExactly("A-1", "A-2", "A-3");
    assertThat(cells(sticks, "stock_ft")).containsExactly("18", "0", "0");
    assertThat(cells(sticks, "stick_1")).containsExactly("0", "0", "0");
    assertThat(cells(sticks, "stick_2")).containsExactly("1", "0", "0");
  }
}

package sheathwright.sheathing.triage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** The order and the limits are common practice, no source: each row of it worked by hand. */
class SheetActionTest {

  private static final int SEED = 20;
  private static final int CASES = 3000;

  @ParameterizedTest(name = "{0} → {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "finding=rot probe_in=3/8 framing_stops=yes | stop | stop: a report stops the framing under it | probe",
        "finding=rot probe_in=3/8 | replace | replace: an awl goes in 3/8 in; more than 1/4 in is cut out | nothing else",
        "finding=rot probe_in=0.26 | replace | replace: an awl goes in 0.26 in; more than 1/4 in is cut out | nothing else",
        "finding=rot probe_in=1/4 | watch | watch: what was measured lies within the limits | nothing else",
        "finding=rot probe_in=3/8 probe_limit_in=1/2 | watch | watch: what was measured lies within the limits | nothing else",
        "finding=delaminated | replace | replace: it is parted or split through | nothing else",
        "finding=broken probe_in=1/8 | replace | replace: it is parted or split through | nothing else",
        "finding=hole hole_in=1-1/8 | replace | replace: a hole is 1-1/8 in; more than 1 in is not covered | nothing else",
        "finding=hole hole_in=4-1/2 | replace | replace: a hole is 4.5 in; more than 1 in is not covered | nothing else",
        "finding=pulled hold_lb=60 wanted_lb=72.5 | replace | replace: a screw holds 60 lb; less than 72.5 lb is not enough | nothing else",
        "finding=thin thickness_in=3/8 least_thickness_in=15/32 | stop | stop: its thickness is 3/8 in; less than 15/32 in needs an overlay or a new deck: ask | nothing else",
        "finding=hole hole_in=1 | cover | cover: a hole is 1 in; up to 1 in is covered with sheet metal | nothing else",
        "finding=unsupported bearing_in=3/8 | support | support: an end bears on 3/8 in; less than 1/2 in gets a scab or a block | nothing else",
        "finding=unsupported bearing_in=3/4 edge_support=no edge_needed=yes | support | support: a long edge is bare that the span table wants held | nothing else",
        "finding=tight joint_gap_in=1/32 hump_in=3/16 | relieve | relieve: a closed joint stands up 3/16 in; more than 1/8 in is sawn to 1/8 in | nothing else",
        "finding=tight joint_gap_in=1/16 hump_in=3/16 | watch | watch: what was measured lies within the limits | nothing else",
        "finding=stain sound_nails=20 wanted_nails=33 | refasten | refasten: it is held by 20 sound nails; fewer than 33 sound nails calls for more by the schedule | stain",
        "finding=stain moisture_pct=24 | dry | dry: the wood holds 24 %; more than 19 % is not covered: read it again | stain",
        "finding=stain | watch | watch: find the water and let it dry | nothing else",
        "finding=stain over_build_up=yes | watch | watch: find the water and let it dry | build-up",
        "finding=rot probe_in=0 over_build_up=yes | lift | lift: it lies over a rafter that is built up: lay it again | nothing else",
        "finding=rot | replace | replace: rot, not measured | nothing else",
        "finding=soft | replace | replace: soft, not measured | nothing else",
        "finding=swollen moisture_pct=30 | replace | replace: swollen, not measured | moisture",
        "finding=hole | replace | replace: hole, not measured | nothing else",
        "finding=pulled hold_lb=60 | replace | replace: pulled, not measured | nothing else",
        "finding=thin | stop | stop: thin, not measured | nothing else",
        "finding=unsupported | support | support: unsupported, not measured | nothing else",
        "finding=gap-wide | support | support: gap-wide, not measured | nothing else",
        "finding=tight hump_in=1/4 | relieve | relieve: tight, not measured | nothing else",
        "finding=loose | refasten | refasten: it gives or moves on its nails, and the wood is not shown to be bad | nothing else",
        "finding=soft probe_in=1/8 | refasten | refasten: it gives or moves on its nails, and the wood is not shown to be bad | nothing else",
        "finding=soft probe_in=1/2 bearing_in=1/4 sound_nails=3 wanted_nails=33 moisture_pct=20 | replace | replace: an awl goes in 1/2 in; more than 1/4 in is cut out | bearing, nails, moisture",
      })
  void sheetAction_isTheRowOfTheTable(String given, String action, String reason, String also) {
    Asked asked = asked(given);
    assertThat(asked.answer("action")).isEqualTo(action);
    assertThat(asked.answer("reason")).isEqualTo(reason);
    assertThat(asked.answer("also")).isEqualTo(also);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "finding=rot | 0",
        "finding=rot probe_in=0 | 1",
        "finding=rot hold_lb=60 | 0",
        "finding=rot hold_lb=60 wanted_lb=50 thickness_in=1/2 | 1",
        "finding=rot edge_support=no | 0",
        "finding=rot edge_support=yes edge_needed=no hump_in=0 joint_gap_in=1/8 | 2",
        "finding=rot probe_in=0 hole_in=0 hold_lb=9 wanted_lb=9 thickness_in=1 least_thickness_in=1 bearing_in=1"
            + " edge_support=yes edge_needed=no hump_in=0 joint_gap_in=1/8 sound_nails=1 wanted_nails=1"
            + " moisture_pct=9 | 9",
      })
  void sheetAction_countsWhatItHadToGoBy(String given, int measured) {
    assertThat(asked(given).number("measured")).isEqualTo(measured);
  }

  @Test
  void sheetAction_neverReplacesOnMoistureAlone() {
    for (String finding : List.of("stain", "loose", "tight", "thin", "unsupported", "gap-wide")) {
      assertThat(asked("finding=" + finding + " moisture_pct=100").answer("action"))
          .as(finding)
          .isNotEqualTo("replace");
    }
  }

  @Test
  void sheetAction_saysWhatANumberMayBe() {
    assertThat(asked("finding=rot probe_in=5").refusal())
        .hasValueSatisfying(
            reason -> assertThat(reason).startsWith("probe_in is 5; it must be from 0 to 3, "));
  }

  /** Random sheets against the same rules, written once more as plain ifs on plain numbers. */
  @Test
  void sheetAction_isWhatPlainIfsSay() {
    Random random = new Random(SEED);
    List<String> findings =
        List.of(
            "rot",
            "delaminated",
            "soft",
            "swollen",
            "hole",
            "broken",
            "loose",
            "tight",
            "unsupported",
            "stain",
            "thin",
            "gap-wide",
            "pulled");
    Map<String, Integer> seen = new HashMap<>();
    for (int i = 0; i < CASES; i++) {
      String finding = findings.get(random.nextInt(findings.size()));
      Map<String, Double> numbers = new HashMap<>();
      maybe(random, numbers, "probe_in", 0, 0.125, 0.25, 0.375);
      maybe(random, numbers, "hole_in", 0.5, 1, 1.5);
      maybe(random, numbers, "hold_lb", 40, 70);
      maybe(random, numbers, "wanted_lb", 40, 70);
      maybe(random, numbers, "thickness_in", 0.375, 0.5);
      maybe(random, numbers, "least_thickness_in", 0.375, 0.5);
      maybe(random, numbers, "bearing_in", 0.25, 0.5, 0.75);
      maybe(random, numbers, "joint_gap_in", 0.03125, 0.0625, 0.125);
      maybe(random, numbers, "hump_in", 0.0625, 0.125, 0.1875);
      maybe(random, numbers, "sound_nails", 10, 33);
      maybe(random, numbers, "wanted_nails", 10, 33);
      maybe(random, numbers, "moisture_pct", 12, 19, 24);
      String held = List.of("", "yes", "no").get(random.nextInt(3));
      String needed = List.of("", "yes", "no").get(random.nextInt(3));
      boolean stops = random.nextInt(12) == 0;
      boolean over = random.nextInt(4) == 0;

      Asked asked =
          Asked.of("sheet_action")
              .with("finding", finding)
              .with("edge_support", held)
              .with("edge_needed", needed)
              .with("framing_stops", stops ? "yes" : "no")
              .with("over_build_up", over ? "yes" : "no");
      for (Map.Entry<String, Double> number : numbers.entrySet()) {
        asked = asked.with(number.getKey(), number.getValue().toString());
      }
      List<String> all = oracle(finding, numbers, held.equals("no") && needed.equals("yes"));
      if (stops) {
        all.add(0, "stop");
      }
      if (over) {
        all.add("lift");
      }
      String expected = all.isEmpty() ? "watch" : all.get(0);
      seen.merge(expected, 1, Integer::sum);
      assertThat(asked.answer("action"))
          .as("%s %s %s %s", finding, numbers, held, needed)
          .isEqualTo(expected);
      String also = asked.answer("also");
      assertThat(also.equals("nothing else") ? 0 : also.split(", ").length)
          .isEqualTo(Math.max(0, all.size() - 1));
    }
    assertThat(seen)
        .containsOnlyKeys(
            "stop", "replace", "cover", "support", "relieve", "refasten", "dry", "watch", "lift");
  }

  private static List<String> oracle(String finding, Map<String, Double> at, boolean bareEdge) {
    List<String> all = new ArrayList<>();
    Double probe = at.get("probe_in");
    Double hole = finding.equals("hole") ? at.get("hole_in") : null;
    boolean pulled = at.containsKey("hold_lb") && at.containsKey("wanted_lb");
    boolean gauged = at.containsKey("thickness_in") && at.containsKey("least_thickness_in");
    Double bearing = at.get("bearing_in");
    boolean joint = at.containsKey("joint_gap_in") && at.containsKey("hump_in");
    boolean counted = at.containsKey("sound_nails") && at.containsKey("wanted_nails");
    add(all, "replace", probe != null && probe > 0.25);
    add(all, "replace", finding.equals("delaminated") || finding.equals("broken"));
    add(all, "replace", hole != null && hole > 1);
    add(all, "replace", pulled && at.get("hold_lb") < at.get("wanted_lb"));
    add(
        all,
        "replace",
        probe == null && List.of("rot", "soft", "swollen").contains(finding)
            || finding.equals("hole") && hole == null
            || finding.equals("pulled") && !pulled);
    add(all, "stop", gauged && at.get("thickness_in") < at.get("least_thickness_in"));
    add(all, "stop", finding.equals("thin") && !gauged);
    add(all, "cover", hole != null && hole <= 1);
    add(all, "support", bearing != null && bearing < 0.5);
    add(all, "support", bareEdge);
    add(all, "support", bearing == null && List.of("unsupported", "gap-wide").contains(finding));
    add(all, "relieve", joint && at.get("joint_gap_in") < 0.0625 && at.get("hump_in") > 0.125);
    add(all, "relieve", finding.equals("tight") && !joint);
    add(all, "refasten", counted && at.get("sound_nails") < at.get("wanted_nails"));
    add(
        all,
        "refasten",
        finding.equals("loose") || finding.equals("soft") && probe != null && probe <= 0.25);
    add(all, "dry", at.containsKey("moisture_pct") && at.get("moisture_pct") > 19);
    add(all, "watch", finding.equals("stain"));
    return all;
  }

  private static void add(List<String> all, String action, boolean speaks) {
    if (speaks) {
      all.add(action);
    }
  }

  private static void maybe(
      Random random, Map<String, Double> numbers, String column, double... values) {
    int which = random.nextInt(2 * values.length);
    if (which < values.length) {
      numbers.put(column, values[which]);
    }
  }

  private static Asked asked(String given) {
    Asked asked = Asked.of("sheet_action");
    for (String pair : given.strip().split(" +")) {
      asked = asked.with(pair.split("=")[0], pair.split("=")[1]);
    }
    return asked;
  }
}

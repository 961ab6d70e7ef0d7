package sheathwright.job.triage;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Figure;
import sheathwright.job.table.Field;
import sheathwright.sheathing.triage.SheetTest;
import sheathwright.sheathing.triage.TriageLimits;

/** The limits that a firm may set, each with the test that it belongs to and what it measures. */
enum RuledLimit {
  PROBE(SheetTest.PROBE, "probe_in", RuleFields.Sense.ABOVE, "probe"),
  LARGE_HOLE(SheetTest.LARGE_HOLE, "hole_in", RuleFields.Sense.ABOVE, "hole"),
  BEARING(SheetTest.BEARING, "bearing_in", RuleFields.Sense.BELOW, "bearing"),
  JOINT(SheetTest.HUMP, "joint_gap_in", RuleFields.Sense.BELOW, "jointGap"),
  HUMP(SheetTest.HUMP, "hump_in", RuleFields.Sense.ABOVE, "hump"),
  MOISTURE(SheetTest.MOISTURE, "moisture_pct", RuleFields.Sense.ABOVE, "moisture");

  final SheetTest test;
  final String measure;
  final RuleFields.Sense sense;
  private final String part;

  RuledLimit(SheetTest test, String measure, RuleFields.Sense sense, String part) {
    this.test = test;
    this.measure = measure;
    this.sense = sense;
    this.part = part;
  }

  /** The limit as a number may be given for it. */
  Field<? extends Figure<?>> field() {
    return Field.<Figure<?>>of(TriageLimits.class, part, "Limit");
  }

  /** Those of a test. */
  static List<RuledLimit> of(SheetTest test) {
    return Stream.of(values()).filter(limit -> limit.test == test).toList();
  }

  /** Tests with what they measure, in words. */
  static String inWords(Stream<RuledLimit> limits) {
    return limits
        .map(limit -> limit.test.word() + " (" + limit.measure + ")")
        .collect(joining(", "));
  }
}

package sheathwright.job;

import java.util.List;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Field;
import sheathwright.leveling.target.TargetObjective;
import sheathwright.leveling.target.TargetRules;

/** What a job's tables say where every rafter was read at several stations. */
final class SurveyTables {

  /** The column that makes a reading one of several on its rafter. */
  static final String STATION = "up_in";

  static final List<Field> READINGS =
      List.of(
          Field.name("plane", "Plane"),
          Field.name("rafter", "Rafter"),
          Field.number("along_in", "From the left", -2_400, 6_000),
          Field.number(STATION, "From the eave", 0, 2_400),
          Field.number("drop_in", "Drop below the string", -6, 6).ifKnown(),
          Field.number("reading_in", "String to wood, over the blocks", 0, 12).ifKnown(),
          Field.number("least_in", "Build-up at least", 0, 12).ifKnown(),
          Field.number("most_in", "Build-up at most", 0, 12).ifKnown());

  /** The string under which the wood was read, where the table does not say the drop itself. */
  static final List<Field> STRING =
      List.of(
          Field.number("block_in", "Blocks under the string's ends", 0, 6).ifKnown(),
          Field.number("string_lb_per_ft", "String weight", Units.POUND_PER_FOOT, 0, 1).ifKnown(),
          Field.number("string_tension_lb", "String tension", 1, 500).ifKnown());

  static final List<Field> FACTS =
      List.of(
          Field.word("target", "Bring rafters to", TargetRules.Shape.class),
          Field.word("objective", "Least build-up", TargetObjective.class),
          Field.number("cap_in", "Build-up at most", 0, 12).ifKnown(),
          Field.number("lower_bearing_in", "Lower bearing, from the eave", 0, 2_400),
          Field.number("upper_bearing_in", "Upper bearing, from the eave", 0, 2_400),
          Field.word("full_bearing", "Sisters run from bearing to bearing", YesNo.class),
          Field.number("least_lap_in", "Least sister lap on the rafter", 1, 12),
          Field.word("flatness", "Flatness required", Flatness.class),
          Field.number("sag_fraction", "Sag limit, span/", Units.RATIO, 60, 1_000).ifKnown());

  /** Said of rafters that nobody surveyed too: it stops their repair. */
  static final List<Field> TRUSS = List.of(Field.word("truss", "Framed with trusses", YesNo.class));

  /** How flat the user wants the wood. */
  enum Flatness implements sheathwright.figure.Option<Flatness> {
    USUAL,
    STRICT
  }

  private SurveyTables() {}
}

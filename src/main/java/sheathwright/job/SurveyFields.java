package sheathwright.job;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Field;
import sheathwright.leveling.target.TargetObjective;
import sheathwright.leveling.target.TargetRules;

/** What a job's tables say where every rafter was read at several stations. */
final class SurveyFields {

  static final Field<Figure<Length>> READING =
      Field.number("reading_in", "String to wood, over the blocks", Units.INCH, 0, 12).ifKnown();

  static final Field<Figure<Length>> LEAST =
      Field.number("least_in", "Build-up at least", Units.INCH, 0, 12).ifKnown();

  static final Field<Figure<Length>> MOST =
      Field.number("most_in", "Build-up at most", Units.INCH, 0, 12).ifKnown();

  static final List<Field<?>> READINGS =
      List.of(
          PlaceFields.PLANE,
          PlaceFields.RAFTER,
          PlaceFields.ALONG,
          PlaceFields.UP,
          PlaceFields.DROP.ifKnown(),
          READING,
          LEAST,
          MOST,
          LifeFields.WHEN_DONE,
          LifeFields.WHEN_DONE_ON);

  static final Field<Figure<Length>> BLOCK =
      Field.number("block_in", "Blocks under the string's ends", Units.INCH, 0, 6).ifKnown();

  static final Field<Figure<LineForce>> STRING_WEIGHT =
      Field.number("string_lb_per_ft", "String weight", Units.POUND_PER_FOOT, 0, 1).ifKnown();

  static final Field<Figure<Force>> STRING_TENSION =
      Field.number("string_tension_lb", "String tension", Units.POUND, 1, 500).ifKnown();

  /** The string under which the wood was read, where the table does not say the drop itself. */
  static final List<Field<?>> STRING = List.of(BLOCK, STRING_WEIGHT, STRING_TENSION);

  static final Field<Choice<TargetRules.Shape>> TARGET =
      Field.word("target", "Bring rafters to", TargetRules.Shape.class);

  static final Field<Choice<TargetObjective>> OBJECTIVE =
      Field.word("objective", "Least build-up", TargetObjective.class);

  static final Field<Figure<Length>> CAP =
      Field.number("cap_in", "Build-up at most", Units.INCH, 0, 12).ifKnown();

  static final Field<Figure<Length>> LOWER_BEARING =
      Field.number("lower_bearing_in", "Lower bearing, from the eave", Units.INCH, 0, 2_400);

  static final Field<Figure<Length>> UPPER_BEARING =
      Field.number("upper_bearing_in", "Upper bearing, from the eave", Units.INCH, 0, 2_400);

  static final Field<Choice<YesNo>> FULL_BEARING =
      Field.word("full_bearing", "Sisters run from bearing to bearing", YesNo.class);

  static final Field<Figure<Length>> LEAST_LAP =
      Field.number("least_lap_in", "Least sister lap on the rafter", Units.INCH, 1, 12);

  static final Field<Choice<Flatness>> FLATNESS =
      Field.word("flatness", "Flatness required", Flatness.class);

  static final Field<Figure<Ratio>> SAG_FRACTION =
      Field.number("sag_fraction", "Sag limit, span/", Units.RATIO, 60, 1_000).ifKnown();

  static final List<Field<?>> FACTS =
      List.of(
          TARGET,
          OBJECTIVE,
          CAP,
          LOWER_BEARING,
          UPPER_BEARING,
          FULL_BEARING,
          LEAST_LAP,
          FLATNESS,
          SAG_FRACTION);

  static final Field<Choice<YesNo>> IS_TRUSS =
      Field.word("truss", "Framed with trusses", YesNo.class);

  /** Said of rafters that nobody surveyed too: it stops their repair. */
  static final List<Field<?>> TRUSS = List.of(IS_TRUSS);

  /** How flat the user wants the wood. */
  enum Flatness implements sheathwright.figure.Option<Flatness> {
    USUAL,
    STRICT
  }

  private SurveyFields() {}
}

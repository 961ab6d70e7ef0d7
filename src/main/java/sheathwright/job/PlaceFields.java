package sheathwright.job;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.life.DeckBoards;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.MarkFields;
import sheathwright.job.table.Field;
import sheathwright.roof.Facing;
import sheathwright.roof.Leans;
import sheathwright.sheathing.patch.Finding;

/** The columns of the tables that say where something is on the roof. */
final class PlaceFields {

  static final Field<Figure<Length>> DROP =
      Field.number("drop_in", "Drop below the string", Units.INCH, -6, 6);

  static final Field<Choice<String>> PLANE = Field.name("plane", "Plane");

  static final Field<Figure<Length>> EAVE =
      Field.number("eave_ft", "Eave", Units.FOOT, 1, 500).ifKnown();

  static final Field<Figure<Length>> SLOPE_LENGTH =
      Field.number("slope_length_ft", "Slope length", Units.FOOT, 1, 200).ifKnown();

  static final Field<Figure<Length>> LEFT_LEAN =
      Field.<Figure<Length>>of(Leans.class, "left", "Left side leans in").ifKnown();

  static final Field<Figure<Length>> RIGHT_LEAN =
      Field.<Figure<Length>>of(Leans.class, "right", "Right side leans in").ifKnown();

  static final Field<Choice<String>> CORNERS = Field.text("corners_ft", "Corners").ifKnown();

  static final Field<Figure<Length>> FIRST_JOINT =
      Field.number("joint_in", "First end joint of course 1, old deck", Units.INCH, 0, 96)
          .ifKnown();

  static final Field<Figure<Length>> STAGGER =
      Field.number("stagger_in", "Shift of every other course, old deck", Units.INCH, 0, 96)
          .ifKnown();

  static final Field<Figure<Length>> FIRST_COURSE =
      Field.number("first_course_in", "Height of course 1, old deck", Units.INCH, 6, 48).ifKnown();

  /** How the old sheets of a plane lie. */
  static final List<Field<Figure<Length>>> OLD_SHEETS = List.of(FIRST_JOINT, STAGGER, FIRST_COURSE);

  static final Field<Choice<Facing>> FACES =
      Field.word("faces", "Looks to", Facing.class).ifKnown();

  static final Field<Figure<Length>> EAVE_X =
      Field.number("eave_x_ft", "Left end of the eave, east of a point", Units.FOOT, -2_000, 2_000)
          .ifKnown();

  static final Field<Figure<Length>> EAVE_Y =
      Field.number(
              "eave_y_ft", "Left end of the eave, north of that point", Units.FOOT, -2_000, 2_000)
          .ifKnown();

  /** Where a plane lies in the plan of the roof; nothing is worked out from it. */
  static final List<Field<?>> ON_THE_GROUND = List.of(FACES, EAVE_X, EAVE_Y);

  static final List<Field<?>> PLANES =
      List.of(
          PLANE,
          EAVE,
          SLOPE_LENGTH,
          LEFT_LEAN,
          RIGHT_LEAN,
          CORNERS,
          FIRST_JOINT,
          STAGGER,
          FIRST_COURSE,
          FACES,
          EAVE_X,
          EAVE_Y,
          DeckBoards.DECK,
          DeckBoards.BOARD);

  static final Field<Figure<Ratio>> COURSE =
      Field.whole("course", "Course, from the plane's lowest point", Units.RATIO, 1, 200);

  static final Field<Figure<Length>> JOINT =
      Field.number("joint_in", "End joint, from the left", Units.INCH, -2_400, 6_000);

  static final List<Field<?>> JOINTS = List.of(PLANE, COURSE, JOINT);

  static final Field<Figure<Length>> OPENING_ALONG =
      Field.number("along_ft", "From the left", Units.FOOT, -200, 500);

  static final Field<Figure<Length>> OPENING_UP =
      Field.number("up_ft", "From the eave", Units.FOOT, 0, 200);

  static final Field<Figure<Length>> OPENING_WIDTH =
      Field.number("width_ft", "Width", Units.FOOT, 0.25, 100);

  static final Field<Figure<Length>> OPENING_HEIGHT =
      Field.number("height_ft", "Height", Units.FOOT, 0.25, 100);

  static final Field<Choice<String>> OPENING =
      Field.name("opening", "What it is: chimney, skylight").ifKnown();

  static final List<Field<?>> OPENINGS =
      List.of(PLANE, OPENING_ALONG, OPENING_UP, OPENING_WIDTH, OPENING_HEIGHT, OPENING);

  static final Field<Figure<Length>> CENTER =
      Field.number("center_in", "Center", Units.INCH, -2_400, 6_000);

  static final List<Field<?>> SUPPORTS = List.of(PLANE, CENTER);

  static final Field<Choice<String>> MARK = Field.name("mark", "Mark");

  static final Field<Choice<Finding>> FINDING = Field.word("finding", "Finding", Finding.class);

  static final Field<Figure<Length>> ALONG =
      Field.number("along_in", "From the left", Units.INCH, -2_400, 6_000);

  static final Field<Figure<Length>> UP =
      Field.number("up_in", "From the eave", Units.INCH, 0, 2_400);

  static final Field<Figure<Length>> WIDTH =
      Field.number("width_in", "Width", Units.INCH, 1, 1_200).ifKnown();

  static final Field<Figure<Length>> HEIGHT =
      Field.number("height_in", "Height", Units.INCH, 1, 1_200).ifKnown();

  /** Where a mark lies; a mark without measures names its place. */
  static final List<Field<Figure<Length>>> MEASURES =
      List.of(ALONG.ifKnown(), UP.ifKnown(), WIDTH, HEIGHT);

  static final Field<Choice<String>> SHEET =
      Field.name("sheet", "Place on the map, for the four measures").ifKnown();

  static final Field<Choice<String>> EVIDENCE = Field.text("evidence", "Evidence").ifKnown();

  static final List<Field<?>> MARKS =
      MarkFields.with(
          List.of(
              MARK,
              PLANE,
              FINDING,
              MEASURES.get(0),
              MEASURES.get(1),
              WIDTH,
              HEIGHT,
              EVIDENCE,
              SHEET),
          DeckBoards.COUNT);

  static final Field<Choice<String>> RAFTER = Field.name("rafter", "Rafter");

  static final Field<Figure<Length>> DROP_AT_MIDDLE =
      Field.number("drop_in", "Drop at mid-length", Units.INCH, 0, 6);

  /** Where a rafter stands that was read at mid-length; else they are counted from the left. */
  static final Field<Figure<Length>> RAFTER_ALONG =
      Field.number(ALONG.name(), "Its center, from the left", Units.INCH, -2_400, 6_000).ifKnown();

  static final List<Field<?>> READINGS =
      List.of(
          PLANE,
          RAFTER,
          DROP_AT_MIDDLE,
          RAFTER_ALONG,
          LifeFields.WHEN_DONE,
          LifeFields.WHEN_DONE_ON);

  private PlaceFields() {}
}

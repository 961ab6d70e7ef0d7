package sheathwright.job.life;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.life.MarkFields.Decided;
import sheathwright.job.table.Field;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.job.zone.ZoneFields;

/**
 * Planes whose old deck is boards: they have no places, so that what is found on them is told by
 * measure and billed by the foot of board; and what is told of sheets is not told of them.
 */
public final class DeckBoards {

  /** What an old deck is made of. */
  public enum Of implements Option<Of> {
    SHEETS,
    BOARDS
  }

  public static final Field<Choice<Of>> DECK =
      Field.word("deck", "The old deck is", Of.class).ifKnown();

  public static final Field<Figure<Length>> BOARD =
      Field.number("board_in", "One old board covers, up the slope", Units.INCH, 1, 24).ifKnown();

  /** What a plane says of its boards. */
  public static final List<Field<?>> OF_A_PLANE = List.of(DECK, BOARD);

  public static final Field<Figure<Ratio>> COUNT =
      Field.whole("boards", "So many boards, for height_in", Units.RATIO, 1, 500).ifKnown();

  /** What is done to sheets, and to nothing else. */
  private static final Set<Decided> TO_SHEETS =
      EnumSet.of(Decided.SUPPORT, Decided.RELIEVE, Decided.LIFT);

  /** What is measured of sheets, and of nothing else. */
  private static final List<Field<?>> OF_SHEETS =
      List.of(
          MarkFields.THICKNESS,
          MarkFields.HUMP,
          MarkFields.JOINT_GAP,
          MarkFields.JOINT_LENGTH,
          MarkFields.BEARING,
          MarkFields.EDGE_SUPPORT,
          MarkFields.SOUND_NAILS);

  private static final String TO_DO = "replace, refasten, cover, dry, watch or stop";

  private final ReadTable planes;
  private final Set<String> names;

  /** The board decks of a table of planes. */
  public DeckBoards(ReadTable planes) {
    this.planes = planes;
    this.names =
        planes.rows().stream()
            .filter(DeckBoards::isOf)
            .flatMap(plane -> plane.read(ZoneFields.ITS_PLANE).stream())
            .map(Choice::value)
            .collect(Collectors.toSet());
  }

  /** Whether the old deck of a plane is boards. */
  public static boolean isOf(Row plane) {
    return plane.read(DECK).filter(of -> of.value() == Of.BOARDS).isPresent();
  }

  /** Whether something lies on boards. */
  public boolean isUnder(Row row) {
    return row.read(ZoneFields.ITS_PLANE)
        .filter(plane -> names.contains(plane.value()))
        .isPresent();
  }

  /** Whether no plane is of boards. */
  public boolean isEmpty() {
    return names.isEmpty();
  }

  /** Why something may not be done to boards, with what may; nothing where it may. */
  public static Optional<String> refused(String plane, String action) {
    return TO_SHEETS.stream().map(Decided::word).anyMatch(action::equals)
        ? Optional.of(
            "%s is done to sheets, and the deck of plane %s is boards; what may be done to them is %s"
                .formatted(action, plane, TO_DO))
        : Optional.empty();
  }

  /**
   * Says everything that does not hold of board decks.
   *
   * @param ofOldSheets what a plane says of how its sheets lie
   * @param height of a mark
   */
  public void hold(
      List<? extends Field<?>> ofOldSheets,
      ReadTable joints,
      ReadTable zones,
      ReadTable marks,
      Field<?> height) {
    planes.rows().forEach(plane -> holds(plane, ofOldSheets));
    for (Row joint : joints.rows()) {
      if (isUnder(joint)) {
        joints.problem(
            joint, ZoneFields.ITS_PLANE, isBoards(joint, "has no end joints of sheets", "joint"));
      }
    }
    for (Row zone : zones.rows()) {
      if (isUnder(zone)) {
        zones.problem(
            zone, ZoneFields.PLANE, isBoards(zone, "has no places, which zones count", "zone"));
      }
    }
    marks.rows().forEach(mark -> holds(mark, marks, height));
  }

  private static String isBoards(Row row, String therefore, String what) {
    return "the deck of plane %s is boards, and %s; take the %s out, or give sheets in deck of the plane"
        .formatted(row.of(ZoneFields.ITS_PLANE).value(), therefore, what);
  }

  private void holds(Row plane, List<? extends Field<?>> ofOldSheets) {
    if (!isOf(plane)) {
      if (plane.has(BOARD)) {
        planes.problem(
            plane,
            BOARD,
            "it is given, but the deck is not boards; give boards in deck, or leave it blank");
      }
      return;
    }
    if (!plane.has(BOARD)) {
      planes.problem(
          plane,
          BOARD,
          "it is empty, but the deck is boards; give how far up the slope one of them covers, such as 7-1/4 for a 1x8 laid tight");
    }
    for (Field<?> field : ofOldSheets) {
      if (plane.has(field)) {
        planes.problem(
            plane,
            field,
            "it tells how sheets lie, but the deck is boards; leave it blank, or give sheets in deck");
      }
    }
  }

  private void holds(Row mark, ReadTable marks, Field<?> height) {
    if (!isUnder(mark)) {
      if (mark.has(COUNT)) {
        marks.problem(
            mark,
            COUNT,
            "boards are counted, but the deck of the plane is sheets; give height_in, or boards in deck of the plane");
      }
      return;
    }
    String plane = mark.of(ZoneFields.ITS_PLANE).value();
    if (mark.has(COUNT) && mark.has(height)) {
      marks.problem(
          mark, COUNT, "so many boards and height_in are both given; give one of the two");
    }
    if (mark.has(OrderFields.OF_SHEET)) {
      marks.problem(
          mark,
          OrderFields.OF_SHEET,
          "%s is given, but the deck of plane %s is boards and has no places; give along_in, up_in, width_in, and height_in or boards"
              .formatted(mark.of(OrderFields.OF_SHEET).value(), plane));
    }
    List<String> told =
        OF_SHEETS.stream().filter(mark::has).map(Field::name).collect(Collectors.toList());
    if (!told.isEmpty()) {
      marks.problem(
          mark,
          OF_SHEETS.stream().filter(mark::has).findFirst().orElseThrow(),
          "%s %s told of sheets, but the deck of plane %s is boards; leave it blank, and say by finding and action what is to be done"
              .formatted(String.join(", ", told), told.size() == 1 ? "is" : "are", plane));
    }
    mark.read(MarkFields.ACTION)
        .flatMap(action -> refused(plane, action.value().word()))
        .ifPresent(message -> marks.problem(mark, MarkFields.ACTION, message));
  }
}

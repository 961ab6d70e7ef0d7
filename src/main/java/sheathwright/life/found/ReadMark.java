package sheathwright.life.found;

import java.util.Comparator;
import java.util.Optional;
import sheathwright.catalog.NaturalOrder;
import sheathwright.figure.Reading;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.Deck;
import sheathwright.job.life.BilledTo;
import sheathwright.job.life.MarkFields;
import sheathwright.job.life.Stage;
import sheathwright.job.table.Row;
import sheathwright.sheathing.patch.Mark;

/**
 * A mark as it is counted.
 *
 * @param key what it is called
 * @param action what is done about it
 * @param reason why, in a sentence
 * @param boards that it lies on, where the deck of its plane is boards
 * @param reach where it lies among the places of its plane, if that has some
 * @param jointFeet length of the joint, where it was measured; else 0
 * @param isEdge whether a long edge was looked at, and not the bearing of an end
 * @param isEnd whether the bearing of an end was measured
 * @param on the day it was found; empty where nobody says
 * @param isOpened whether it was found with the covering off
 * @param isVoid whether it was taken back
 * @param isCharged whether anybody pays for it
 * @param isTyped whether somebody typed what is done about it
 */
record ReadMark(
    String key,
    String action,
    String reason,
    Optional<BoardRun> boards,
    MarkReach reach,
    double jointFeet,
    boolean isEdge,
    boolean isEnd,
    String on,
    boolean isOpened,
    boolean isVoid,
    boolean isCharged,
    boolean isTyped) {

  /**
   * The order in which marks are counted that ask for the same: what is billed, then what was found
   * with the covering off, then by the day, those that nobody dated last, then by the mark.
   */
  static final Comparator<ReadMark> COUNTED =
      Comparator.comparing((ReadMark mark) -> !mark.isCharged())
          .thenComparing(mark -> !mark.isOpened())
          .thenComparing(mark -> mark.on().isEmpty())
          .thenComparing(ReadMark::on)
          .thenComparing(ReadMark::key, NaturalOrder.OF_NAMES);

  /** The place that it is known by; the plane and the mark where the deck has no places. */
  String place() {
    return boards
        .map(run -> "%s mark %s".formatted(run.plane(), key))
        .orElseGet(() -> reach.main().key().toString());
  }

  static ReadMark of(Reading reading, Deck.Marked marked, Stage stage) {
    Row row = marked.row();
    Mark mark = marked.mark();
    String label = "mark " + mark.key() + ", ";
    Mark.Seen seen = mark.seen(reading);
    boolean isVoid =
        row.has(MarkFields.VOID)
            && reading.word(label + "taken back", row.of(MarkFields.VOID)) == YesNo.YES;
    boolean isFree =
        row.has(MarkFields.BILL)
            && reading.word(label + "who pays", row.of(MarkFields.BILL)) == BilledTo.NONE;
    boolean isOpened =
        row.has(MarkFields.STAGE_FOUND)
            ? reading.word(label + "found when", row.of(MarkFields.STAGE_FOUND))
                == MarkFields.Seen.OPENED
            : stage.isAtLeast(Stage.OPENED);
    return new ReadMark(
        mark.key(),
        reading.word(label + "what is done by the rules or the crew", marked.decision().action()),
        reading.word(label + "why", marked.decision().reason()),
        marked
            .part()
            .map()
            .board()
            .map(
                board ->
                    BoardRun.of(
                        marked.part().plane().name(),
                        seen.box(),
                        reading.number(label + "what one board covers", board, Units.INCH))),
        new MarkReach(
            seen.box(),
            seen.whole().isEmpty(),
            mark.places(reading, marked.part().map()),
            marked.part().map().places(reading)),
        row.has(MarkFields.JOINT_LENGTH)
            ? reading.number(
                label + "length of the joint", row.of(MarkFields.JOINT_LENGTH), Units.FOOT)
            : 0,
        row.has(MarkFields.EDGE_SUPPORT),
        row.has(MarkFields.BEARING),
        row.has(MarkFields.ON) ? reading.word(label + "found on", row.of(MarkFields.ON)) : "",
        isOpened,
        isVoid,
        !isVoid && !isFree,
        row.has(MarkFields.ACTION));
  }
}

package sheathwright.life.found;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Lengths;
import sheathwright.figure.Shown;
import sheathwright.roof.Box;

/**
 * Boards of a plane side by side, as a mark tells of them: whole boards, as long as the mark is
 * wide.
 *
 * @param plane that they lie on
 * @param box that they fill, in inches
 * @param board what one of them covers up the slope, in inches
 */
record BoardRun(String plane, Box box, double board) {

  /** A tape is read to an inch: a board of which less is marked stays. */
  private static final double TAPE = 1;

  private static final double INCHES_A_FOOT = 12;
  private static final double MILLIONTHS = 1e6;

  /** The boards that a marked box lies on, counted from its lower side. */
  static BoardRun of(String plane, Box marked, double board) {
    double boards = Math.max(1, Math.ceil((marked.height() - TAPE) / board));
    return new BoardRun(
        plane, Box.at(marked.left(), marked.bottom(), marked.width(), boards * board), board);
  }

  /** Feet of board in it, but for what lies in others of its plane. */
  double feetBeside(List<BoardRun> others) {
    List<Box> left = List.of(box);
    for (BoardRun other : others) {
      if (other.plane().equals(plane)) {
        left = left.stream().flatMap(part -> outside(other.box(), part)).toList();
      }
    }
    double inches = left.stream().mapToDouble(Box::area).sum() / board;
    return Math.round(inches / INCHES_A_FOOT * MILLIONTHS) / MILLIONTHS;
  }

  /** How many boards and how long: {@code 3 boards, 8' 0"}. */
  String inWords() {
    return "%s, %s"
        .formatted(
            Shown.counted(Math.round(box.height() / board), "board"),
            Lengths.inFeetAndInches(box.width()));
  }

  /** Whether it has boards in common with another. */
  boolean shares(BoardRun other) {
    return other.plane().equals(plane) && other.box().overlaps(box);
  }

  /** What is left of a box beside another. */
  private static Stream<Box> outside(Box other, Box part) {
    if (!other.overlaps(part)) {
      return Stream.of(part);
    }
    Box common = other.and(part);
    List<Box> left = new ArrayList<>();
    left.add(new Box(part.left(), part.bottom(), part.right(), common.bottom()));
    left.add(new Box(part.left(), common.top(), part.right(), part.top()));
    left.add(new Box(part.left(), common.bottom(), common.left(), common.top()));
    left.add(new Box(common.right(), common.bottom(), part.right(), common.top()));
    return left.stream().filter(box -> box.width() > 0 && box.height() > 0);
  }
}

package sheathwright.life.found;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.job.life.MarkFields.Decided;

/**
 * How many feet of board each mark is counted with: every foot is replaced once and nailed again
 * once, with the mark that is counted first, and nothing is nailed again that is replaced.
 */
final class BoardCounts {

  private final Map<String, BoardRun> replaced = new LinkedHashMap<>();
  private final Map<String, BoardRun> nailed = new LinkedHashMap<>();

  /**
   * The boards that are replaced.
   *
   * @param marks in the order in which they are counted
   */
  BoardCounts(List<ReadMark> marks) {
    for (ReadMark mark : marks) {
      if (!mark.isVoid() && mark.action().equals(Decided.REPLACE.word())) {
        mark.boards().ifPresent(run -> replaced.put(mark.key(), run));
      }
    }
  }

  /**
   * So many feet, counted with a mark.
   *
   * @param with the marks with which others of its boards are counted
   */
  record Feet(double feet, List<String> with) {}

  /** Feet of board that are replaced with a mark. */
  Feet replaced(String mark, BoardRun run) {
    Map<String, BoardRun> before = new LinkedHashMap<>();
    for (Map.Entry<String, BoardRun> each : replaced.entrySet()) {
      if (each.getKey().equals(mark)) {
        break;
      }
      before.put(each.getKey(), each.getValue());
    }
    return beside(run, before);
  }

  /** Feet of board that are nailed again with a mark; it is asked for once, in its turn. */
  Feet nailed(String mark, BoardRun run) {
    Map<String, BoardRun> before = new LinkedHashMap<>(replaced);
    before.putAll(nailed);
    nailed.put(mark, run);
    return beside(run, before);
  }

  /** With which mark boards are replaced that a mark lies on, if they are. */
  List<String> replacing(BoardRun run) {
    return named(run, replaced);
  }

  private static Feet beside(BoardRun run, Map<String, BoardRun> before) {
    return new Feet(run.feetBeside(List.copyOf(before.values())), named(run, before));
  }

  private static List<String> named(BoardRun run, Map<String, BoardRun> others) {
    List<String> marks = new ArrayList<>();
    others.forEach(
        (mark, other) -> {
          if (run.shares(other)) {
            marks.add(mark);
          }
        });
    return marks;
  }
}

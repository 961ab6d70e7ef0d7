package sheathwright.life.found;

import java.util.List;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.life.MarkFields;
import sheathwright.job.life.Stage;

/** What all marks of a job lead to. */
public final class FoundWork {

  private final List<Found> list;

  private FoundWork(List<Found> list) {
    this.list = list;
  }

  /** What the marks of a job lead to, in the order of their table. */
  public static FoundWork of(Estimate estimate) {
    boolean isOpened = estimate.job().stage().value().isAtLeast(Stage.OPENED);
    return new FoundWork(
        estimate.deck().marked().stream().map(marked -> found(marked, isOpened)).toList());
  }

  /** Each mark once, then each sheet that is lifted because a rafter under it is built up. */
  public List<Found> list() {
    return list;
  }

  private static Found found(Deck.Marked marked, boolean isOpened) {
    return new Found(
        marked.mark().key(),
        marked.mark().sheet().map(key -> key.value()).orElse(marked.part().plane().name()),
        marked.decision().action().value(),
        marked.decision().reason().value(),
        java.util.Optional.empty(),
        0,
        marked.row().has(MarkFields.ON) ? marked.row().of(MarkFields.ON).plain() : "",
        isOpened,
        false);
  }
}

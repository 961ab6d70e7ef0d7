package sheathwright.job.solve;

import sheathwright.cutting.Patience;
import sheathwright.sheathing.layout.LayoutAnswer;

/**
 * How long the fewest sheets for the patches of a job are sought: no longer for many planes than
 * for one. Every plane has the same share, whatever the others use of theirs, so that what is found
 * for it depends on nothing that its own guard does not watch.
 */
public final class PatchPatience {

  private PatchPatience() {}

  /** The share of one plane. */
  public static Patience ofEach(int markedPlanes) {
    return Patience.asked(LayoutAnswer.PATIENCE / markedPlanes);
  }
}

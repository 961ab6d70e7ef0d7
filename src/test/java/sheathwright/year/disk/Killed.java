package sheathwright.year.disk;

/** A process died here: nothing that it would have done after this reaches the disk. */
public final class Killed extends Error {

  private static final long serialVersionUID = 1L;

  Killed() {
    super("killed", null, false, false);
  }
}

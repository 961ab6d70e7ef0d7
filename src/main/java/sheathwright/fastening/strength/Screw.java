package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;

/**
 * A screw as it is driven into a rafter.
 *
 * @param kind wood screw or lag screw
 * @param diameter D over the thread, of a lag screw its shank
 * @param length of the screw
 * @param thread length of the threaded part with its tip
 * @param tip length of the tapered tip that does not count
 */
public record Screw(
    @Column("screw_kind") OneOf<ScrewKind> kind,
    @Column(
            value = "diameter_in",
            least = 0.1,
            most = 0.5,
            rule = "a #10 screw has 0.19",
            symbol = "D")
        Figure<Length> diameter,
    @Column(
            value = "length_in",
            least = 0.5,
            most = 16,
            rule = "2-1/2 and 3 are usual",
            symbol = "L")
        Figure<Length> length,
    @Column(value = "thread_in", least = 0.25, most = 16, rule = "about two thirds of the length")
        Figure<Length> thread,
    @Column(value = "tip_in", preset = "0", least = 0, most = 1, rule = "0 for a wood screw")
        Figure<Length> tip) {

  private static final Columns COLUMNS = Columns.of(Screw.class);

  public Screw {
    kind = COLUMNS.let("kind", kind);
    diameter = COLUMNS.let("diameter", diameter);
    length = COLUMNS.let("length", length);
    thread = COLUMNS.let("thread", thread);
    tip = COLUMNS.let("tip", tip);
  }

  /** A screw of this kind; its measures are still to be said. */
  public static Screw kind(OneOf<ScrewKind> kind) {
    return new Screw(kind, null, null, null, null);
  }

  public Screw diameter(Figure<Length> across) {
    return new Screw(kind, across, length, thread, tip);
  }

  public Screw length(Figure<Length> overall) {
    return new Screw(kind, diameter, overall, thread, tip);
  }

  public Screw thread(Figure<Length> threaded) {
    return new Screw(kind, diameter, length, threaded, tip);
  }

  public Screw tip(Figure<Length> tapered) {
    return new Screw(kind, diameter, length, thread, tapered);
  }
}

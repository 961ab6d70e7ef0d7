package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;

/**
 * A standing-seam panel by its maker's test, safety factor taken off.
 *
 * @param seam tested uplift of panel and seam
 * @param clip tested strength of one clip
 * @param cover of the panel, seam to seam
 */
public record StandingSeam(
    @Column(
            value = "seam_psf",
            least = 1,
            most = 500,
            rule = "of the maker's test, with safety factor")
        Figure<Pressure> seam,
    @Column(
            value = "clip_lb",
            least = 1,
            most = 5000,
            rule = "of the maker's test, with safety factor")
        Figure<Force> clip,
    @Column(value = "panel_cover_in", least = 4, most = 48, rule = "seam to seam; 16 is usual")
        Figure<Length> cover) {

  private static final Columns COLUMNS = Columns.of(StandingSeam.class);

  public StandingSeam {
    seam = COLUMNS.let("seam", seam);
    clip = COLUMNS.let("clip", clip);
    cover = COLUMNS.let("cover", cover);
  }

  /** A panel that was tested to this much uplift and whose clips to that much pull. */
  public static StandingSeam tested(Figure<Pressure> seam, Figure<Force> clip) {
    return new StandingSeam(seam, clip, null);
  }

  public StandingSeam cover(Figure<Length> seamToSeam) {
    return new StandingSeam(seam, clip, seamToSeam);
  }
}

package sheathwright.job.site;

import java.util.List;
import sheathwright.fastening.uplift.MakerSpacing;
import sheathwright.fastening.uplift.ScrewedClips;
import sheathwright.fastening.uplift.StandingSeam;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.job.table.Field;

/** What job.csv may say of a standing-seam covering and of the clips that hold it to the deck. */
public final class CoveringFields {

  static final Field<Figure<Pressure>> SEAM =
      Field.of(StandingSeam.class, "seam", "Panel and seam, by the maker's test");

  static final Field<Figure<Force>> CLIP =
      Field.of(StandingSeam.class, "clip", "One clip, by the maker's test");

  static final Field<Figure<Length>> COVER =
      Field.of(StandingSeam.class, "cover", "Panel cover, seam to seam");

  static final Field<Figure<Force>> SCREW =
      Field.of(ScrewedClips.class, "screw", "One screw out of the deck, allowable");

  static final Field<Figure<Ratio>> SCREWS =
      Field.of(ScrewedClips.class, "screws", "Screws in each clip");

  static final Field<Figure<Length>> TESTED =
      Field.of(MakerSpacing.class, "tested", "Clip spacing of the maker's test");

  static final Field<Figure<Length>> MOST =
      Field.of(MakerSpacing.class, "most", "Greatest clip spacing of the maker");

  static final Field<Figure<Length>> CLIP_SPACING =
      Field.<Figure<Length>>of(ScrewedClips.class, "spacing", "Clip spacing, if it is set")
          .ifKnown();

  /** Given whole, or not at all. */
  public static final List<Field<?>> COVERING =
      List.of(SEAM, CLIP, COVER, SCREW, SCREWS, TESTED, MOST, CLIP_SPACING);

  private CoveringFields() {}
}

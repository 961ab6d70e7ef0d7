package sheathwright.job.site;

import java.util.EnumMap;
import java.util.Map;
import sheathwright.fastening.uplift.ClipSpacing;
import sheathwright.fastening.uplift.ClipSpacings;
import sheathwright.fastening.uplift.MakerSpacing;
import sheathwright.fastening.uplift.StandingSeam;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.table.Facts;

/** The clips of a job's standing-seam covering: how far apart they may stand, zone by zone. */
public final class Covering {

  private static final Source ON_A_CLIP = Source.derived("load of the area that one clip holds");

  private final Facts said;
  private final Map<RoofArea, ClipSpacing> clips = new EnumMap<>(RoofArea.class);
  private final Map<RoofArea, Figure<Length>> used = new EnumMap<>(RoofArea.class);
  private final Figure<Force> onAScrew;

  Covering(Facts said, SiteWind wind) {
    this.said = said;
    StandingSeam panel =
        StandingSeam.tested(said.figure(CoveringFields.SEAM), said.figure(CoveringFields.CLIP))
            .cover(said.figure(CoveringFields.COVER));
    MakerSpacing maker =
        MakerSpacing.tested(said.figure(CoveringFields.TESTED))
            .most(said.figure(CoveringFields.MOST));
    for (RoofArea area : RoofArea.values()) {
      ClipSpacing limit =
          ClipSpacings.clipSpacingLimit(
              said.figure(CoveringFields.SCREW),
              said.figure(CoveringFields.SCREWS),
              panel,
              maker,
              wind.uplift(area));
      Figure<Length> spacing =
          limit.spacing().as("clip_spacing_%s_in".formatted(area.word()), Units.INCH);
      clips.put(
          area,
          new ClipSpacing(
              spacing, limit.governs().as("clip_spacing_%s_governs".formatted(area.word()))));
      used.put(
          area,
          said.knows(CoveringFields.CLIP_SPACING)
              ? said.fact(CoveringFields.CLIP_SPACING)
              : spacing.roundedDown().as("clips_apart_%s_in".formatted(area.word()), Units.INCH));
    }
    onAScrew =
        onAScrew(RoofArea.FIELD, wind)
            .max(onAScrew(RoofArea.EDGES, wind))
            .max(onAScrew(RoofArea.CORNERS, wind))
            .as("load_on_a_screw_lb", Units.POUND);
  }

  private Figure<Force> onAScrew(RoofArea area, SiteWind wind) {
    return wind.uplift(area)
        .times(said.figure(CoveringFields.COVER).times(used(area)))
        .dividedBy(said.figure(CoveringFields.SCREWS))
        .as("load_on_a_screw_%s_lb".formatted(area.word()), Units.POUND, ON_A_CLIP);
  }

  /**
   * What the wind asks of one screw of the clips where it pulls hardest, at ASD level; refused
   * where nobody can say.
   */
  public Figure<Force> onAScrew() {
    return onAScrew;
  }

  /** Whether the job says how its covering is held. */
  public boolean isKnown() {
    return said.knows(CoveringFields.SEAM);
  }

  /** How far apart clips may stand in a part of the roof; refused where nobody can say. */
  public ClipSpacing clips(RoofArea area) {
    return clips.get(area);
  }

  /** What is screwed down: as it was set, or else by whole inches as close as the wind asks. */
  public Figure<Length> used(RoofArea area) {
    return used.get(area);
  }

  /** The clips that are screwed down against the wind in a part of the roof. */
  Check uplift(RoofArea area) {
    return Check.of(
        "clips of the covering against uplift, %s".formatted(area.word()),
        "covering_uplift_%s_ratio".formatted(area.word()),
        used(area),
        clips(area).spacing());
  }
}

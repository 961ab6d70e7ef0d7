package sheathwright.job.path;

import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Check;
import sheathwright.figure.Check.Look;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Refusal;
import sheathwright.figure.Units;
import sheathwright.job.site.RoofArea;
import sheathwright.job.site.Site;

/**
 * The nails of the eave row against the wind, which pulls an overhang from above and pushes it from
 * below: there sheets fly first. Without an overhang the row is a corner of the roof like others.
 */
final class EaveRows {

  static final String WHAT = "deck nails of the eave row, in the wind";
  static final String LOOK = "how far the eave stands out beyond the wall";

  private static final Figure<Length> NONE = Figure.of(0, Units.INCH);

  private EaveRows() {}

  static Check check(Unsaid said, Site site) {
    Figure<Length> overhang = said.number(PathFields.OVERHANG, 0);
    Condition isLookedAt = said.isLookedAt(PathFields.OVERHANG_KNOWN);
    Figure<Pressure> holds = site.nailing().holds(RoofArea.CORNERS);
    Figure<Pressure> corner = site.wind().uplift(RoofArea.CORNERS);
    Figure<Pressure> lifted = site.wind().overhang();
    Optional<Refusal> refusal =
        Stream.of(holds, corner, lifted).flatMap(each -> each.refusal().stream()).findFirst();
    if (refusal.isPresent()) {
      return Check.neverLooked(WHAT, refusal.get().reason());
    }
    return Check.onceLooked(
        WHAT,
        "eave_row",
        Figure.choose(overhang.isMoreThan(NONE), lifted, corner)
            .as("pull_at_the_eave_psf", Units.PSF, lifted.source()),
        holds,
        new Look(isLookedAt, LOOK));
  }
}

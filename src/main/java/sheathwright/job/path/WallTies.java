package sheathwright.job.path;

import sheathwright.figure.Check;
import sheathwright.figure.Check.Look;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.RafterUplifts;
import sheathwright.job.site.SiteFields;
import sheathwright.loads.wind.CodeWind;
import sheathwright.loads.wind.Exposure;

/**
 * What ties each rafter to the wall, against the wind. Where the code's table ends, in the open, in
 * stronger wind, over wider roofs and longer overhangs, nothing is said.
 */
final class WallTies {

  static final String WHAT = "ties of rafters to the wall, in the wind";
  static final String LOOK =
      "the rafters known, and the tie of each to the plate and what its maker lists it for, at a site of exposure b to 140 mph, on"
          + " rafters to 24 in apart over roofs to 48 ft wide (36 ft where they are over 16 in apart) with overhangs"
          + " to 24 in";
  private static final Source TABLE = Source.secondHand("IRC 2018 Table R802.11");
  private static final Figure<Speed> LEAST_WIND = end("least_tie_wind_mph", 85, Units.MPH);
  private static final Figure<Speed> MOST_WIND = end("most_tie_wind_mph", 140, Units.MPH);
  private static final Figure<Length> CLOSE = end("close_rafters_in", 16, Units.INCH);
  private static final Figure<Length> MOST_SPACING = end("most_tie_spacing_in", 24, Units.INCH);
  private static final Figure<Length> MOST_SPAN = end("most_tie_span_ft", 48, Units.FOOT);
  private static final Figure<Length> MOST_WIDE_SPAN = end("most_wide_tie_span_ft", 36, Units.FOOT);
  private static final Figure<Length> MOST_OVERHANG = end("most_tie_overhang_in", 24, Units.INCH);
  private static final Figure<Ratio> BOTH_SIDES = Figure.of(2, Units.RATIO);

  private WallTies() {}

  private static <Q extends Quantity> Figure<Q> end(String name, double number, Unit<Q> unit) {
    return Figure.constant(name, number, unit, TABLE).symbol(Figure.of(number, unit).shown());
  }

  static Check check(Unsaid said, PathRafters rafters) {
    Figure<Force> tie = said.number(PathFields.UPLIFT_TIE, 0);
    Condition isLookedAt = said.isLookedAt(PathFields.UPLIFT_TIE_KNOWN);
    Figure<Length> overhang = said.number(PathFields.OVERHANG, 0);
    Condition isOverhangLookedAt = said.isLookedAt(PathFields.OVERHANG_KNOWN);
    if (!said.knows(SiteFields.WIND) || !said.knows(SiteFields.EXPOSURE)) {
      return Check.neverLooked(WHAT, "wind_mph and exposure of the site, and " + LOOK);
    }
    Figure<Speed> wind = said.fact(SiteFields.WIND);
    Choice<Exposure> exposure = said.fact(SiteFields.EXPOSURE);
    Figure<Length> span =
        rafters.triangle().span().times(BOTH_SIDES).as("tied_roof_span_ft", Units.FOOT);
    Figure<Length> mostSpan =
        Figure.choose(rafters.spacing().isAtMost(CLOSE), MOST_SPAN, MOST_WIDE_SPAN)
            .as("most_span_of_the_ties_ft", Units.FOOT);
    Choice<YesNo> isPrinted =
        Condition.all(
                exposure.is(Exposure.EXPOSURE_B),
                wind.isAtMost(MOST_WIND),
                rafters.spacing().isAtMost(MOST_SPACING),
                span.isAtMost(mostSpan),
                overhang.isAtMost(MOST_OVERHANG))
            .as("code_has_the_uplift");
    Figure<Force> uplift =
        RafterUplifts.upliftTie(
                rafters.spacing().min(MOST_SPACING).as("tied_spacing_in", Units.INCH),
                CodeWind.of(
                    wind.max(LEAST_WIND).min(MOST_WIND).as("tied_wind_mph", Units.MPH),
                    Choice.choose(isPrinted.is(YesNo.YES), exposure, Exposure.EXPOSURE_B)
                        .as("tied_exposure")),
                span.min(mostSpan).as("tied_span_ft", Units.FOOT),
                rafters.triangle().rise(),
                tie)
            .uplift();
    return Check.onceLooked(
        WHAT,
        "wall_tie",
        uplift,
        tie,
        new Look(
            Condition.all(
                isPrinted.is(YesNo.YES),
                rafters.isKnown().as("rafters_of_the_ties_are_known").is(YesNo.YES),
                isLookedAt.as("wall_ties_are_known").is(YesNo.YES),
                isOverhangLookedAt.as("overhang_is_known").is(YesNo.YES)),
            LOOK));
  }
}

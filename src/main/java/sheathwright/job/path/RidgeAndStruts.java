package sheathwright.job.path;

import sheathwright.figure.Check;
import sheathwright.figure.Check.Look;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.BearsOnWall;
import sheathwright.framing.stop.ReckonedStops;
import sheathwright.framing.stop.Ridge;
import sheathwright.job.site.SiteFields;

/**
 * What the rafters lean on at the top and between. A ridge board carries nothing and needs a slope;
 * what a ridge beam carries is an engineer's to say, and is never checked here.
 */
final class RidgeAndStruts {

  private static final String RIDGE = "ridge board, which needs a slope of its own";
  private static final String RIDGE_LOOK =
      "what the rafters meet at the top; what a beam there carries, and the posts below it, only an engineer says";
  private static final String STRUTS = "struts that stand on no bearing wall";
  private static final String STRUT_LOOK =
      "whether there are struts or purlins, and what each stands on";
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);

  private RidgeAndStruts() {}

  static Choice<Ridge> ridgeOf(Unsaid said) {
    return said.word(PathFields.RIDGE, Ridge.RIDGE_NOT_SEEN);
  }

  static Check ridge(Unsaid said) {
    Choice<Ridge> ridge = ridgeOf(said);
    if (!said.knows(SiteFields.RISE)) {
      return Check.neverLooked(RIDGE, "the slope (rise_in_12), and " + RIDGE_LOOK);
    }
    return Check.onceLooked(
        RIDGE,
        "ridge_board",
        ReckonedStops.leastRise(),
        said.fact(SiteFields.RISE),
        new Look(ridge.is(Ridge.ONLY_A_RIDGE_BOARD), RIDGE_LOOK));
  }

  static Check struts(Unsaid said) {
    if (!said.knows(PathFields.STRUT) || !said.knows(PathFields.STRUT_ON_WALL)) {
      return Check.neverLooked(
          STRUTS, STRUT_LOOK + ": strut_ft, 0 without one, and strut_on_bearing_wall");
    }
    Choice<BearsOnWall> wall = said.fact(PathFields.STRUT_ON_WALL);
    Figure<Length> at = said.fact(PathFields.STRUT);
    Condition standsOnNothing =
        Condition.all(at.isMoreThan(Figure.of(0, Units.FOOT)), wall.is(BearsOnWall.ON_NO_WALL));
    return Check.noneOf(
            STRUTS, Figure.choose(standsOnNothing, ONE, NONE).as("struts_on_no_wall", Units.RATIO))
        .once(
            new Look(
                Condition.any(
                    wall.is(BearsOnWall.ON_BEARING_WALL), wall.is(BearsOnWall.ON_NO_WALL)),
                STRUT_LOOK));
  }
}

package sheathwright.job.path;

import sheathwright.fastening.strength.FastenerSizes;
import sheathwright.fastening.strength.NailLaterals;
import sheathwright.fastening.strength.NailType;
import sheathwright.fastening.strength.ShearNail;
import sheathwright.fastening.strength.SideMember;
import sheathwright.figure.Check;
import sheathwright.figure.Check.Look;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.nailed.AdjustedLaterals;
import sheathwright.framing.nailed.ListedNail;
import sheathwright.framing.rafter.CodeSnow;
import sheathwright.framing.rafter.HeelJoint;
import sheathwright.framing.rafter.RafterThrusts;
import sheathwright.framing.stop.Ridge;
import sheathwright.job.site.SiteFields;
import sheathwright.wood.LoadDuration;

/**
 * The nails that join each rafter to its ceiling joist, against the thrust of the pair. A nail of
 * which nobody says what it is counts as the thinnest that is driven there; one that does not reach
 * far enough into the second piece does not count at all. All load counts as long as snow does. A
 * ridge beam leaves no thrust.
 */
final class HeelJoints {

  static final String WHAT = "nails where rafters and ceiling joists meet";
  static final String LOOK =
      "the rafters known, and the nails at each joint of rafter and ceiling joist counted, and their size";

  private static final Source PENETRATION = Source.secondHand("NDS 2018 12.1.6");
  private static final Figure<Ratio> SIX =
      Figure.constant("least_heel_penetration_in_diameters", 6, Units.RATIO, PENETRATION)
          .symbol("6");
  private static final Figure<Ratio> BOTH = Figure.of(2, Units.RATIO);
  private static final Figure<Nails> NONE = Figure.of(0, Units.NAIL);

  private HeelJoints() {}

  static Check check(Unsaid said, PathRafters rafters) {
    Choice<NailType> nail = said.word(PathFields.HEEL_NAIL, NailType.NAIL_8D_BOX);
    Figure<Nails> found = said.number(PathFields.HEEL_NAILS, 0);
    FastenerSizes.NailSize size = FastenerSizes.nailDimensions(nail);
    Figure<Length> side = rafters.thickness();
    Figure<Length> inside =
        size.length().min(side.times(BOTH).in(Units.INCH)).as("heel_nail_inside_in", Units.INCH);
    Figure<Length> least =
        side.plus(SIX.times(size.diameter())).as("least_heel_nail_in", Units.INCH, PENETRATION);
    HeelJoint joint =
        HeelJoint.lateral(lateral(rafters, size, inside.max(least))).found(found).snow(snow(said));
    Choice<YesNo> isBeam =
        RidgeAndStruts.ridgeOf(said).is(Ridge.RIDGE_BEAM).as("ridge_leaves_no_thrust");
    Figure<Nails> nails =
        RafterThrusts.heelNails(rafters.triangle(), rafters.spacing(), rafters.load(), joint)
            .nails();
    Figure<Nails> asked =
        Figure.choose(isBeam.is(YesNo.YES), NONE, nails)
            .as("heel_nails_asked", Units.NAIL, nails.source());
    Figure<Nails> counted =
        Figure.choose(inside.isAtLeast(least), found, NONE).as("heel_nails_counted", Units.NAIL);
    return Check.onceLooked(
        WHAT,
        "heel_joint",
        asked,
        counted,
        new Look(
            Condition.any(
                isBeam.is(YesNo.YES),
                Condition.all(
                        rafters.isKnown().as("rafters_of_the_heel_are_known").is(YesNo.YES),
                        said.isLookedAt(PathFields.HEEL_NAILS_KNOWN)
                            .as("heel_joints_are_known")
                            .is(YesNo.YES))
                    .as("heel_joints_and_rafters_are_known")
                    .is(YesNo.YES)),
            LOOK));
  }

  private static Figure<Force> lateral(
      PathRafters rafters, FastenerSizes.NailSize size, Figure<Length> counted) {
    Figure<Length> length = counted.as("heel_nail_counted_in", Units.INCH);
    Figure<Force> listed =
        NailLaterals.nailLateral(
                ShearNail.diameter(size.diameter())
                    .length(length)
                    .bendingYield(size.bendingYield()),
                SideMember.of(rafters.thickness(), rafters.gravity()),
                rafters.gravity())
            .lateral();
    return AdjustedLaterals.adjustedLateral(
        ListedNail.lateral(listed)
            .penetration(
                length
                    .minus(rafters.thickness())
                    .as("heel_nail_penetration_in", Units.INCH, PENETRATION))
            .diameter(size.diameter())
            .penetrationCounted(YesNo.YES),
        LoadDuration.DURATION_SNOW,
        rafters.service());
  }

  /** By the code's map; where nobody says it, the code's row is not read. */
  private static Choice<CodeSnow> snow(Unsaid said) {
    if (!said.knows(SiteFields.GROUND_SNOW)) {
      return Choice.literal(CodeSnow.NOT_SAID);
    }
    Figure<Pressure> snow = said.fact(SiteFields.GROUND_SNOW);
    Choice<CodeSnow> upTo = Choice.literal(CodeSnow.OVER_70);
    upTo = upTo(snow, 70, CodeSnow.TO_70, upTo);
    upTo = upTo(snow, 50, CodeSnow.TO_50, upTo);
    upTo = upTo(snow, 30, CodeSnow.TO_30, upTo);
    return upTo(snow, 20, CodeSnow.TO_20, upTo);
  }

  private static Choice<CodeSnow> upTo(
      Figure<Pressure> snow, double psf, CodeSnow column, Choice<CodeSnow> above) {
    return Choice.choose(snow.isAtMost(Figure.of(psf, Units.PSF)), Choice.literal(column), above)
        .as("code_snow_" + column.word().replace('-', '_') + "_or_above");
  }
}

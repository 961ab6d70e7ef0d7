package sheathwright.loads.wind;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.published.LoadEdition;

/**
 * The zones of a roof where the wind pulls hardest along its edges and at its corners, by the label
 * that the edition prints for them: whoever nails a whole strip alike nails it for these.
 */
public final class WorstZones {

  private static final Source LARGEST =
      Source.derived("largest outward coefficient that the edition prints there");

  private WorstZones() {}

  /** Along eave, ridge and rake or hip. */
  public static Choice<WindZone> edges(
      OneOf<LoadEdition> edition, OneOf<RoofShape> roof, Figure<Ratio> rise) {
    var hip = Choice.choose(isSteep(rise), WindZone.ZONE_2R, WindZone.ZONE_2E).as("hip_edges");
    var labeled = Choice.choose(isGable(roof), WindZone.ZONE_2N, hip).as("edges_by_letter");
    return Choice.choose(hasNoLetters(edition, rise), WindZone.ZONE_2, labeled)
        .as("worst_edge_zone", LARGEST);
  }

  /** Where two of them meet. */
  public static Choice<WindZone> corners(
      OneOf<LoadEdition> edition, OneOf<RoofShape> roof, Figure<Ratio> rise) {
    var gable =
        Choice.choose(isSteep(rise), WindZone.ZONE_3E, WindZone.ZONE_3R).as("gable_corners");
    var labeled = Choice.choose(isGable(roof), gable, WindZone.ZONE_3).as("corners_by_letter");
    return Choice.choose(hasNoLetters(edition, rise), WindZone.ZONE_3, labeled)
        .as("worst_corner_zone", LARGEST);
  }

  private static Condition isGable(OneOf<RoofShape> roof) {
    return roof.choice().is(RoofShape.GABLE);
  }

  private static Condition isSteep(Figure<Ratio> rise) {
    Choice<RoofSlope> slope = RoofSlope.of(rise);
    return Condition.any(slope.is(RoofSlope.FROM_27), slope.is(RoofSlope.AT_45));
  }

  /** Only ASCE 7-16 divides edges and corners further, and only over 7 degrees. */
  private static Condition hasNoLetters(OneOf<LoadEdition> edition, Figure<Ratio> rise) {
    return Condition.any(
        edition.choice().is(LoadEdition.ASCE7_10),
        edition.choice().is(LoadEdition.ASCE7_22),
        RoofSlope.of(rise).is(RoofSlope.TO_7));
  }
}

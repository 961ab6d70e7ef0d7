package sheathwright.roof;

import java.util.Optional;

/**
 * Where a plane lies in the plan of a roof.
 *
 * @param faces where it looks, if that is told
 * @param eave the left end of its eave as one looks up the slope, in inches east and north of a
 *     point of the user's own, if that is told
 */
public record OnTheGround(Optional<Facing> faces, Optional<Spot> eave) {

  /** A spot of the plane as a bird sees it, once facing and eave are told. */
  public Spot fromAbove(Spot spot, double runOfSlope) {
    double up = Math.toRadians(faces.orElseThrow().degrees() + 180);
    double right = up + Math.PI / 2;
    double run = spot.y() * runOfSlope;
    Spot foot = eave.orElseThrow();
    return new Spot(
        foot.x() + spot.x() * Math.sin(right) + run * Math.sin(up),
        foot.y() + spot.x() * Math.cos(right) + run * Math.cos(up));
  }

  /** Whether it can be drawn from above. */
  public boolean isKnown() {
    return faces.isPresent() && eave.isPresent();
  }
}

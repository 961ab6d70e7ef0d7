package sheathwright.roof;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/**
 * The whole roof of a house from its plan: one body with wings, porches and dormers of one slope,
 * and what is cut out of it. All lengths along the wood; a hip, valley or ridge counts once, though
 * it belongs to two planes.
 *
 * @param area of all planes, chimneys taken off
 * @param ridge all ridges
 * @param hip all hips
 * @param valley all valleys
 * @param eave all eaves
 * @param rake all rakes
 * @param plan what it was measured from
 */
public record House(
    @Column("area_sf") Figure<Area> area,
    @Column("ridge_ft") Figure<Length> ridge,
    @Column("hip_ft") Figure<Length> hip,
    @Column("valley_ft") Figure<Length> valley,
    @Column("eave_ft") Figure<Length> eave,
    @Column("rake_ft") Figure<Length> rake,
    HousePlan plan) {

  private static final Figure<Length> NOTHING = Figure.of(0, Units.FOOT);

  /**
   * The same house with a gabled wing.
   *
   * @param side the side that it grows out of
   * @param at from the left corner of that side, as one looks up the slope
   * @param width across the wing's ridge
   * @param out from the eave to its gable
   */
  public House wing(HouseSide side, Figure<Length> at, Figure<Length> width, Figure<Length> out) {
    return with(new HousePart(HousePart.Kind.WING, side, at, NOTHING, width, out));
  }

  /** The same house with the slope carried on over a porch, so far out from the eave. */
  public House porch(HouseSide side, Figure<Length> at, Figure<Length> width, Figure<Length> out) {
    return with(new HousePart(HousePart.Kind.PORCH, side, at, NOTHING, width, out));
  }

  /**
   * The same house with a gabled dormer.
   *
   * @param at from the left corner of that side to the dormer's eave
   * @param from from the eave to the dormer's front
   * @param width across the dormer's ridge
   * @param depth how far its eaves run back before they meet the slope
   */
  public House dormer(
      HouseSide side,
      Figure<Length> at,
      Figure<Length> from,
      Figure<Length> width,
      Figure<Length> depth) {
    return with(new HousePart(HousePart.Kind.DORMER, side, at, from, width, depth));
  }

  /** The same house without deck over a rectangle, as at a chimney, all in plan. */
  public House chimney(
      HouseSide side,
      Figure<Length> at,
      Figure<Length> from,
      Figure<Length> width,
      Figure<Length> depth) {
    return with(new HousePart(HousePart.Kind.CHIMNEY, side, at, from, width, depth));
  }

  private House with(HousePart part) {
    part.refuseBelowNothing();
    House house = Houses.measured(plan.with(part));
    house.planes(); // refuses what does not fit
    return house;
  }

  /**
   * Its planes, each as it lies, to be laid with sheets: the body's by their side, those of wings
   * and dormers by the side that their eave looks to.
   *
   * @throws RefusedException if a part does not fit the side that it stands on
   */
  public List<Plane> planes() {
    ridge.value(); // refuses here a body or a part that cannot be
    return HousePlanes.of(this);
  }

  /** The plane of this name. */
  public Plane plane(String name) {
    List<Plane> planes = planes();
    return planes.stream()
        .filter(plane -> plane.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new RefusedException(
                    "this house has no plane \"%s\"; it has %s"
                        .formatted(
                            name, String.join(", ", planes.stream().map(Plane::name).toList()))));
  }

  static double feet(Figure<Length> length) {
    return length.in(Units.FOOT).value();
  }
}

package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/** Specific gravities of lumber, by which nails and screws hold in it. */
public final class WoodGravity {

  private static final Table WOODS =
      LeastWood.ofSpecies(
          Published.table("nds/2018/table-12.3.3a.csv", "wood_gravities", "wood gravities", 1));

  private WoodGravity() {}

  /**
   * The specific gravity that the wood of a rafter is taken to have.
   *
   * <pre>
   * listed for the species group; unknown: the least of the list
   * </pre>
   *
   * <p>Does not cover groups that the table leaves out; wood whose stamp cannot be read is unknown.
   * Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * woodGravity(SPRUCE_PINE_FIR) // 0.42
   * woodGravity(UNKNOWN_SPECIES) // 0.36
   * }</pre>
   *
   * @param species species group on the grade stamp
   * @return specific gravity, a pure number
   * @throws RefusedException if the table does not hold the species
   * @see "NDS 2018 Table 12.3.3A, secondary source"
   */
  @LibraryFunction
  @Column("specific_gravity")
  public static Figure<Ratio> woodGravity(@Column("species") OneOf<Species> species) {
    return WOODS
        .number(Units.RATIO, "specific_gravity", species.choice().argument("species"))
        .as("specific_gravity", Units.RATIO, WOODS.source());
  }
}

package sheathwright.loads.snow;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.loads.LoadArguments;
import sheathwright.published.LoadEdition;

/**
 * Snow on the ground by the map of an edition, whose rules take it to the roof.
 *
 * @param load p_g of the edition's own map
 * @param edition of ASCE 7; in tables 7-16 may be written too
 */
public record GroundSnow(
    @Column(
            value = "ground_snow_psf",
            least = 0,
            most = LoadArguments.MOST_SNOW,
            rule = LoadArguments.SNOW_RULE,
            symbol = "p_g")
        Figure<Pressure> load,
    @Column("edition") OneOf<LoadEdition> edition) {

  private static final Columns COLUMNS = Columns.of(GroundSnow.class);

  public GroundSnow {
    load = COLUMNS.let("load", load);
    edition = COLUMNS.let("edition", edition);
  }

  /** So much, by the map of this edition. */
  public static GroundSnow of(Figure<Pressure> load, OneOf<LoadEdition> edition) {
    return new GroundSnow(load, edition);
  }
}

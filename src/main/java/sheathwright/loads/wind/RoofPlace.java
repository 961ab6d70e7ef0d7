package sheathwright.loads.wind;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Ratio;

/**
 * A place on a roof, as the wind tables tell it.
 *
 * @param rise rise in 12 of run
 * @param roof gable or hip; gable also reads what is printed for any roof
 * @param zone one label of the edition's figure: 1, 2, 3, or with e, n or r in ASCE 7-16
 * @param area effective wind area; nails and clips have less than 10 sq ft, where the value at 10
 *     holds
 */
public record RoofPlace(
    @Column(
            value = "rise_in_12",
            least = 0,
            most = 12,
            rule = "the printed coefficients end at 45 degrees, 12 in 12")
        Figure<Ratio> rise,
    @Column("roof") OneOf<RoofShape> roof,
    @Column("zone") OneOf<WindZone> zone,
    @Column(
            value = "area_sf",
            preset = "10",
            least = 0.1,
            most = 1000,
            rule = "10 for nails and clips, 32 for a whole sheet")
        Figure<Area> area) {

  private static final Columns COLUMNS = Columns.of(RoofPlace.class);

  public RoofPlace {
    rise = COLUMNS.let("rise", rise);
    roof = COLUMNS.let("roof", roof);
    zone = COLUMNS.let("zone", zone);
    area = COLUMNS.let("area", area);
  }

  /** A place on a roof of this shape and pitch; nails and clips, if no area is said. */
  public static RoofPlace of(OneOf<RoofShape> roof, Figure<Ratio> rise, OneOf<WindZone> zone) {
    return new RoofPlace(rise, roof, zone, null);
  }

  public RoofPlace area(Figure<Area> effective) {
    return new RoofPlace(rise, roof, zone, effective);
  }
}

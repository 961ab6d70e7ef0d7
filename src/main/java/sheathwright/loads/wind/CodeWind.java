package sheathwright.loads.wind;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Speed;

/**
 * The wind as a building code's own tables ask for it.
 *
 * @param speed ultimate wind speed
 * @param exposure of the site
 */
public record CodeWind(
    @Column(value = "wind_mph", least = 85, most = 200, rule = "ultimate, from the code's map")
        Figure<Speed> speed,
    @Column("exposure") OneOf<Exposure> exposure) {

  private static final Columns COLUMNS = Columns.of(CodeWind.class);

  public CodeWind {
    speed = COLUMNS.let("speed", speed);
    exposure = COLUMNS.let("exposure", exposure);
  }

  /** A wind of this speed at a site of this exposure. */
  public static CodeWind of(Figure<Speed> speed, OneOf<Exposure> exposure) {
    return new CodeWind(speed, exposure);
  }
}

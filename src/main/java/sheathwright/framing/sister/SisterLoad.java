package sheathwright.framing.sister;

import java.util.Objects;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;

/**
 * What a rafter and its sister have to carry, and what lies on the rafter while the sister is
 * nailed.
 *
 * @param load on the span
 * @param existing the part of the dead load that lies on the rafter when the sister is nailed; it
 *     stays in the old rafter
 * @param jacked whether the rafter is shored free of that load before nailing
 * @param deflectionLimit span divided by this is the sag allowed under live load
 */
public record SisterLoad(
    SpanLoad load,
    @Column(
            value = "existing_psf",
            least = 0,
            most = 100,
            rule = "of the dead load: 0 once everything is stripped off",
            symbol = "q_existing")
        Figure<Pressure> existing,
    @Column(value = "jacked", preset = "no") OneOf<YesNo> jacked,
    @Column(
            value = "deflection_limit",
            preset = "180",
            least = 120,
            most = 480,
            rule = "180 with no ceiling below, 240 with one",
            symbol = "n")
        Figure<Ratio> deflectionLimit) {

  private static final Columns COLUMNS = Columns.of(SisterLoad.class);

  public SisterLoad {
    load = Objects.requireNonNullElseGet(load, () -> new SpanLoad(null, null));
    existing = COLUMNS.let("existing", existing);
    jacked = COLUMNS.let("jacked", jacked);
    deflectionLimit = COLUMNS.let("deflectionLimit", deflectionLimit);
  }

  /** This load; what of it is there while the sister is nailed is still to be said. */
  public static SisterLoad of(SpanLoad load) {
    return new SisterLoad(load, null, null, null);
  }

  public SisterLoad existing(Figure<Pressure> there) {
    return new SisterLoad(load, there, jacked, deflectionLimit);
  }

  public SisterLoad jacked(OneOf<YesNo> isJacked) {
    return new SisterLoad(load, existing, isJacked, deflectionLimit);
  }

  public SisterLoad deflectionLimit(Figure<Ratio> divisor) {
    return new SisterLoad(load, existing, jacked, divisor);
  }
}

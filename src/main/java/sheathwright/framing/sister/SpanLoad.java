package sheathwright.framing.sister;

import java.util.Objects;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.framing.rafter.ClearSpan;
import sheathwright.loads.LiveLoad;
import sheathwright.loads.UniformLoad;

/**
 * A simple span of rafters and the even load on it, both on the horizontal projection.
 *
 * @param span clear
 * @param load on each rafter
 */
public record SpanLoad(
    @Column(
            value = "span_ft",
            least = ClearSpan.LEAST_FT,
            most = ClearSpan.MOST_FT,
            rule = ClearSpan.RULE)
        Figure<Length> span,
    UniformLoad load) {

  private static final Columns COLUMNS = Columns.of(SpanLoad.class);

  public SpanLoad {
    span = COLUMNS.let("span", span);
    load = Objects.requireNonNullElseGet(load, () -> new UniformLoad(null, null));
  }

  /** A clear span; its spacing and loads are still to be said. */
  public static SpanLoad span(Figure<Length> clear) {
    return new SpanLoad(clear, null);
  }

  public SpanLoad spacing(Figure<Length> onCenters) {
    LiveLoad passing = new LiveLoad(onCenters, load.live());
    return new SpanLoad(span, new UniformLoad(passing, load.dead()));
  }

  public SpanLoad live(Figure<Pressure> passing) {
    return new SpanLoad(span, load.live(passing));
  }

  public SpanLoad dead(Figure<Pressure> lasting) {
    return new SpanLoad(span, load.dead(lasting));
  }
}

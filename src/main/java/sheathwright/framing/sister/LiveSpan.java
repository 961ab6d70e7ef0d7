package sheathwright.framing.sister;

import java.util.Objects;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.framing.rafter.ClearSpan;
import sheathwright.loads.LiveLoad;

/**
 * A simple span of rafters and what comes and goes on it, both on the horizontal projection.
 *
 * @param span clear
 * @param load on each rafter
 */
public record LiveSpan(
    @Column(
            value = "span_ft",
            least = ClearSpan.LEAST_FT,
            most = ClearSpan.MOST_FT,
            rule = ClearSpan.RULE)
        Figure<Length> span,
    LiveLoad load) {

  private static final Columns COLUMNS = Columns.of(LiveSpan.class);

  public LiveSpan {
    span = COLUMNS.let("span", span);
    load = Objects.requireNonNullElseGet(load, () -> new LiveLoad(null, null));
  }

  /** A clear span; its spacing and load are still to be said. */
  public static LiveSpan span(Figure<Length> clear) {
    return new LiveSpan(clear, null);
  }

  public LiveSpan spacing(Figure<Length> onCenters) {
    return new LiveSpan(span, new LiveLoad(onCenters, load.live()));
  }

  public LiveSpan live(Figure<Pressure> passing) {
    return new LiveSpan(span, load.live(passing));
  }
}

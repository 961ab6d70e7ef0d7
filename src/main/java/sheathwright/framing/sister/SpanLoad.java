package sheathwright.framing.sister;

import java.util.Objects;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;

/**
 * A simple span of rafters and the even load on it, both on the horizontal projection.
 *
 * @param span with what comes and goes on it
 * @param dead what always lies on it
 */
public record SpanLoad(
    LiveSpan span,
    @Column(
            value = "dead_psf",
            least = 0,
            most = 100,
            rule = "of horizontal projection; 10 and 20 are usual",
            symbol = "q_dead")
        Figure<Pressure> dead) {

  private static final Columns COLUMNS = Columns.of(SpanLoad.class);

  public SpanLoad {
    span = Objects.requireNonNullElseGet(span, () -> new LiveSpan(null, null, null));
    dead = COLUMNS.let("dead", dead);
  }

  /** A clear span; its spacing and loads are still to be said. */
  public static SpanLoad span(Figure<Length> clear) {
    return new SpanLoad(LiveSpan.span(clear), null);
  }

  public SpanLoad spacing(Figure<Length> onCenters) {
    return new SpanLoad(span.spacing(onCenters), dead);
  }

  public SpanLoad live(Figure<Pressure> load) {
    return new SpanLoad(span.live(load), dead);
  }

  public SpanLoad dead(Figure<Pressure> load) {
    return new SpanLoad(span, load);
  }
}

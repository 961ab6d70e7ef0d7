package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;

/**
 * A simple span of rafters and what comes and goes on it, both on the horizontal projection.
 *
 * @param spacing of the rafters, center to center
 * @param span clear
 * @param live roof live load or snow
 */
public record LiveSpan(
    @Column(
            value = "spacing_in",
            least = 4,
            most = 48,
            rule = "center to center; 16 and 24 are usual",
            symbol = "spacing")
        Figure<Length> spacing,
    @Column(value = "span_ft", least = 1, most = 40, rule = "clear, on the horizontal projection")
        Figure<Length> span,
    @Column(
            value = "live_psf",
            least = 1,
            most = 300,
            rule = "of horizontal projection; 20 is the usual least",
            symbol = "q_live")
        Figure<Pressure> live) {

  private static final Columns COLUMNS = Columns.of(LiveSpan.class);

  public LiveSpan {
    spacing = COLUMNS.let("spacing", spacing);
    span = COLUMNS.let("span", span);
    live = COLUMNS.let("live", live);
  }

  /** A clear span; its spacing and load are still to be said. */
  public static LiveSpan span(Figure<Length> clear) {
    return new LiveSpan(null, clear, null);
  }

  public LiveSpan spacing(Figure<Length> onCenters) {
    return new LiveSpan(onCenters, span, live);
  }

  public LiveSpan live(Figure<Pressure> load) {
    return new LiveSpan(spacing, span, load);
  }
}

package sheathwright.sheathing.panel;

import java.util.List;
import java.util.Locale;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Units;

/** The thinnest panel that the code's span table prints for a spacing of the supports. */
public final class LeastPanels {

  /** The rows of the table in which the thinnest panel of a span stands, spans rising. */
  private static final List<SpanRating> THINNEST =
      List.of(
          SpanRating.RATING_20_0,
          SpanRating.RATING_24_16,
          SpanRating.RATING_32_16,
          SpanRating.RATING_40_20,
          SpanRating.RATING_48_24,
          SpanRating.RATING_60_32);

  private LeastPanels() {}

  /**
   * The thickness with nothing under the long edges; refused where the supports stand wider than
   * any panel reaches.
   */
  public static Figure<Length> unsupported(Figure<Length> supports) {
    SpanRating widest = THINNEST.get(THINNEST.size() - 1);
    Figure<Length> least =
        PrintedPanel.least(widest)
            .onlyIf(
                supports.isAtMost(reach(widest)),
                "no panel reaches so far with nothing under its long edges (%s)"
                    .formatted(PrintedPanel.SOURCE))
            .as("least_panel_of_the_widest_in", Units.INCH);
    for (int i = THINNEST.size() - 2; i >= 0; i--) {
      SpanRating rating = THINNEST.get(i);
      least =
          Figure.choose(supports.isAtMost(reach(rating)), PrintedPanel.least(rating), least)
              .as("least_panel_from_%s_in".formatted(word(rating)), Units.INCH);
    }
    return least.as("least_panel_in", Units.INCH, PrintedPanel.SOURCE);
  }

  private static Figure<Length> reach(SpanRating rating) {
    return PrintedPanel.unsupported(rating)
        .as("reach_of_%s_in".formatted(word(rating)), Units.INCH);
  }

  private static String word(SpanRating rating) {
    return rating.name().toLowerCase(Locale.ROOT);
  }
}

package sheathwright.repl.show;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.forecast.BadSheetForecast;
import sheathwright.job.Estimate;
import sheathwright.leveling.plan.Straightened;
import sheathwright.life.unseen.JobForecast;
import sheathwright.loads.wind.ZoneMap;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.sheathing.patch.PatchPlan;

/**
 * Pictures in characters: what is used up of what is allowed, lists of figures side by side, decks.
 */
public final class Bars {

  /** Ten characters tell tenths apart. */
  private static final int SHORTEST = 10;

  private Bars() {}

  /** One bar: its label, how long it is, where its limit lies if it has one, and what it says. */
  private record Bar(String label, double length, String text) {}

  /**
   * The picture of a result.
   *
   * @param columns how many characters it may be wide
   * @throws RefusedException if there is none
   */
  public static String of(Object result, int columns) {
    if (result instanceof DeckLayout layout) {
      return layout.planes().stream()
          .map(plane -> DeckChart.of(plane, columns))
          .collect(joining("\n\n"));
    }
    if (result instanceof CourseLayout plane) {
      return DeckChart.of(plane, columns);
    }
    if (result instanceof ZoneMap zones) {
      return ZoneChart.of(zones, columns);
    }
    if (result instanceof PatchPlan patches) {
      return DeckChart.of(patches, columns);
    }
    if (result instanceof Straightened rafters) {
      return LevelChart.of(rafters, columns);
    }
    if (result instanceof BadSheetForecast forecast) {
      return ChanceBars.of(forecast.chances(), columns);
    }
    if (result instanceof Estimate job) {
      return ChanceBars.of(JobForecast.before(job), columns);
    }
    List<Check> checks = checks(result);
    if (!checks.isEmpty()) {
      return ofChecks(checks, columns);
    }
    if (result instanceof List<?> many && !many.isEmpty() && many.get(0) instanceof Figure<?>) {
      return ofFigures(many, columns);
    }
    throw new RefusedException(
        "there is no picture of this yet; show draws a check, a function's checks, a list of figures, a forecast of bad sheets, a job's estimate, a layout, patches, straightened rafters or wind zones");
  }

  private static List<Check> checks(Object result) {
    if (result instanceof Check check) {
      return List.of(check);
    }
    if (!(result instanceof Record results)) {
      return List.of();
    }
    return Arrays.stream(results.getClass().getRecordComponents())
        .map(
            component -> {
              try {
                return component.getAccessor().invoke(results);
              } catch (ReflectiveOperationException impossible) {
                throw new IllegalStateException(impossible);
              }
            })
        .filter(Check.class::isInstance)
        .map(Check.class::cast)
        .toList();
  }

  private static String ofChecks(List<Check> checks, int columns) {
    double longest = Math.max(1, checks.stream().mapToDouble(Bars::ratio).max().orElse(1));
    int label = longest(checks.stream().map(Check::what));
    int width = width(columns - label - longest(checks.stream().map(Bars::said)));
    int limit = (int) Math.round(width / longest);
    List<String> lines = new ArrayList<>();
    for (Check check : checks) {
      int length = (int) Math.round(width * ratio(check) / longest);
      StringBuilder bar = new StringBuilder();
      for (int i = 0; i < width + 1; i++) {
        bar.append(i == limit ? '|' : i < length ? '#' : '.');
      }
      lines.add("%s  %s  %s".formatted(pad(check.what(), label), bar, said(check)));
    }
    lines.add(pad("", label) + "  the mark | is all that is allowed");
    return String.join("\n", lines);
  }

  /** How long the bar of a check is; none where nobody can say. */
  private static double ratio(Check check) {
    return check.ratio().refusal().isPresent() ? 0 : check.ratio().value();
  }

  private static String ofFigures(List<?> figures, int columns) {
    List<Bar> bars =
        figures.stream()
            .filter(Objects::nonNull)
            .map(each -> (Figure<?>) each)
            .map(each -> new Bar(each.isNamed() ? each.symbol() : "", each.value(), each.shown()))
            .toList();
    double longest = bars.stream().mapToDouble(bar -> Math.abs(bar.length())).max().orElse(1);
    int label = longest(bars.stream().map(Bar::label));
    int width = width(columns - label - longest(bars.stream().map(Bar::text)));
    return bars.stream()
        .map(
            bar ->
                pad(bar.label(), label)
                    + "  "
                    + "#"
                        .repeat(
                            longest == 0
                                ? 0
                                : (int) Math.round(width * Math.abs(bar.length()) / longest))
                    + " "
                    + bar.text())
        .collect(joining("\n"));
  }

  private static String said(Check check) {
    return check.ratio() + " " + check.outcome().words();
  }

  private static int longest(Stream<String> texts) {
    return texts.mapToInt(String::length).max().orElse(0);
  }

  /** What is left for a bar beside its label and its text, blanks between them. */
  private static int width(int left) {
    return Math.max(SHORTEST, left - 5);
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}

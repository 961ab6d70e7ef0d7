package sheathwright.repl.show;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Shown;
import sheathwright.forecast.Chances;
import sheathwright.forecast.InHouses;
import sheathwright.life.unseen.JobForecast;

/** How likely each number of bad sheets is, a bar each, and what that means in houses of ten. */
final class ChanceBars {

  /** What stands before and behind a bar. */
  private static final int BESIDE = 16;

  /** Rarer counts are drawn together. */
  private static final double TOO_RARE = 0.005;

  private ChanceBars() {}

  static String of(JobForecast forecast, int columns) {
    return of(forecast.chances(), columns)
        + "\n"
        + String.join("\n", Shown.wrapped("rests on: " + forecast.told(), columns, "", "  "));
  }

  static String of(Chances chances, int columns) {
    int first = 0;
    while (first < chances.most() && 1 - chances.moreThan(first) < TOO_RARE) {
      first++;
    }
    int last = first;
    while (last < chances.most() && chances.moreThan(last) > TOO_RARE) {
      last++;
    }
    double highest = 0;
    for (int count = first; count <= last; count++) {
      highest = Math.max(highest, chances.of(count));
    }
    List<String> lines = new ArrayList<>(List.of("bad sheets, of 100 houses"));
    for (int count = first; count <= last; count++) {
      int length = (int) Math.round((columns - BESIDE) * chances.of(count) / highest);
      lines.add(bar(Shown.text("%5d", count), length, chances.of(count)));
    }
    if (chances.moreThan(last) > 0) {
      int length = (int) Math.round((columns - BESIDE) * chances.moreThan(last) / highest);
      lines.add(bar(" more", length, chances.moreThan(last)));
    }
    lines.add("in houses like this one:");
    lines.addAll(Shown.wrapped(InHouses.words(chances), columns, "", "  "));
    return String.join("\n", lines);
  }

  private static String bar(String label, int length, double chance) {
    return Shown.text("%s  %s %.1f", label, "#".repeat(length), chance * 100);
  }
}

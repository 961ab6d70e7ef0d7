package sheathwright.repl.show;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.leveling.plan.Straightened;
import sheathwright.leveling.target.Surface;
import sheathwright.roof.Spot;

/**
 * How far wood is to be built up, in characters: over a plane, the eave below, and along one rafter
 * before and after.
 */
final class LevelChart {

  /** Characters: room for a height such as "-12 15/16". */
  private static final int LABEL = 8;

  /** Of a picture of one rafter: two of them and their heads fit a window of 24 rows. */
  private static final int PROFILE_ROWS = 9;

  private LevelChart() {}

  /** The rafter that needs most, and build-up over the whole plane. */
  static String of(Straightened rafters, int columns) {
    String worst = rafters.worst().rafter();
    List<Straightened.Standing> stations =
        rafters.standings().stream()
            .filter(station -> station.rafter().plain().equals(worst))
            .toList();
    List<String> pictures = new ArrayList<>();
    pictures.add(
        String.join("\n", Shown.wrapped(rafters.plan().decision().toString(), columns, "", "  ")));
    if (stations.size() > 1) {
      pictures.add(
          "rafter "
              + worst
              + "\n"
              + along(
                  inches(stations, Straightened.Standing::up),
                  inches(stations, Straightened.Standing::before),
                  inches(stations, Straightened.Standing::after),
                  columns - LABEL - 2));
    }
    if (!Surface.through(rafters.buildUps()).isEmpty()) {
      pictures.add(
          "plane " + rafters.readings().plane() + "\n" + over(rafters.buildUps(), columns));
    }
    return String.join("\n\n", pictures);
  }

  private static double[] inches(
      List<Straightened.Standing> stations, Function<Straightened.Standing, Figure<?>> of) {
    return stations.stream()
        .mapToDouble(station -> of.apply(station).in(Units.INCH).value())
        .toArray();
  }

  /** Build-up over a plane: each digit so many steps, a full stop less than one. */
  private static String over(List<List<Surface.Height>> rafters, int widest) {
    List<Surface.Height> all = rafters.stream().flatMap(List::stream).toList();
    double left = all.stream().mapToDouble(each -> each.at().x()).min().orElse(0);
    double right = all.stream().mapToDouble(each -> each.at().x()).max().orElse(0);
    double bottom = all.stream().mapToDouble(each -> each.at().y()).min().orElse(0);
    double top = all.stream().mapToDouble(each -> each.at().y()).max().orElse(0);
    double greatest = all.stream().mapToDouble(Surface.Height::value).max().orElse(0);
    double step = step(greatest);
    double cell = Math.max(1, (right - left) / (widest - 1));
    int columns = 1 + (int) Math.round((right - left) / cell);
    int rows = Math.max(2, (int) Math.round((top - bottom) / (2 * cell)));
    Surface surface = Surface.through(rafters);
    List<String> lines = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      double y = top - (top - bottom) * row / (rows - 1);
      char[] line = new char[columns];
      Arrays.fill(line, ' ');
      for (int column = 0; column < columns; column++) {
        double x = left + (right - left) * column / Math.max(1, columns - 1);
        OptionalDouble height = surface.at(new Spot(x, y));
        if (height.isPresent()) {
          line[column] = digit(height.getAsDouble() / step);
        }
      }
      lines.add(new String(line).stripTrailing());
    }
    char[] feet = new char[columns];
    Arrays.fill(feet, ' ');
    rafters.forEach(rafter -> feet[(int) Math.round((rafter.get(0).at().x() - left) / cell)] = '^');
    lines.add(new String(feet).stripTrailing());
    lines.add(
        "each digit so many times %s to build up, . less than one   ^ rafter"
            .formatted(Lengths.inInches(step)));
    return String.join("\n", lines);
  }

  private static double step(double greatest) {
    List<Double> levels = Surface.levels(Math.max(greatest, 0.25));
    return levels.get(0);
  }

  private static char digit(double steps) {
    int whole = (int) Math.floor(steps + 1e-9);
    return whole <= 0 ? '.' : (char) ('0' + Math.min(9, whole));
  }

  /**
   * One rafter against its string: o where the wood is, = where it will be.
   *
   * @param along stations in inches from the eave
   * @param before heights above the string as found, low negative
   * @param after heights above the string when the work is done
   * @param columns how many characters the picture may be wide
   */
  private static String along(double[] along, double[] before, double[] after, int columns) {
    double low = Math.min(0, Math.min(least(before), least(after)));
    double high = Math.max(0, Math.max(most(before), most(after)));
    double step = Math.max((high - low) / (PROFILE_ROWS - 1), 1.0 / 16);
    int rows = 1 + (int) Math.ceil((high - low) / step - 1e-9);
    double first = along[0];
    double last = along[along.length - 1];
    char[][] picture = new char[rows][columns];
    for (char[] row : picture) {
      Arrays.fill(row, ' ');
    }
    for (int column = 0; column < columns; column++) {
      double x = first + (last - first) * column / (columns - 1);
      picture[(int) Math.round((high - between(along, after, x)) / step)][column] = '=';
      picture[(int) Math.round((high - between(along, before, x)) / step)][column] = 'o';
    }
    List<String> lines = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      String height = Lengths.inInches(high - row * step);
      lines.add(
          (" ".repeat(LABEL - height.length()) + height + " |" + new String(picture[row]))
              .stripTrailing());
    }
    lines.addAll(
        Keys.lines(
            List.of(
                "o the wood as found",
                "= when the work is done",
                "inches above the string, to the nearest 1/16, eave left"),
            columns + LABEL + 2));
    return String.join("\n", lines);
  }

  private static double between(double[] along, double[] heights, double x) {
    int i = 1;
    while (i < along.length - 1 && along[i] < x) {
      i++;
    }
    double part = (x - along[i - 1]) / (along[i] - along[i - 1]);
    return heights[i - 1] + part * (heights[i] - heights[i - 1]);
  }

  private static double least(double[] heights) {
    return Arrays.stream(heights).min().orElse(0);
  }

  private static double most(double[] heights) {
    return Arrays.stream(heights).max().orElse(0);
  }
}

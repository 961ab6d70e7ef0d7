package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sheathwright.catalog.Numbers;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** What was typed after a solver's table: {@code kerf_in=1/8 stock_ft=8,10,12}. */
final class SolverOptions {

  private final Map<String, String> given;
  private final Map<String, String> presets;

  /**
   * @param given what was typed, by name
   * @param presets every option that the solver knows, with what it is when it is not typed
   */
  SolverOptions(Map<String, String> given, Map<String, String> presets) {
    this.presets = presets;
    this.given = given;
    given.forEach(
        (name, value) -> {
          if (!presets.containsKey(name)) {
            throw new RefusedException(
                "\"%s=%s\" is not an option of this solver; it has %s"
                    .formatted(name, value, described(presets)));
          }
        });
  }

  private static String described(Map<String, String> presets) {
    List<String> described = new ArrayList<>();
    presets.forEach((name, preset) -> described.add(name + "=" + preset));
    return String.join(", ", described);
  }

  private String text(String name) {
    return given.getOrDefault(name, presets.get(name));
  }

  /** How long a search may take. */
  double seconds() {
    return number("seconds", 0.1, 3_600);
  }

  /** One of some words. */
  String word(String name, List<String> words) {
    String word = text(name).strip().toLowerCase(Locale.ROOT);
    if (!words.contains(word)) {
      throw new RefusedException(
          "%s is \"%s\"; it must be %s".formatted(name, text(name), String.join(" or ", words)));
    }
    return word;
  }

  /** A number within limits; another one if it is left blank. */
  double numberOr(double blank, String name, double least, double most) {
    return text(name).isBlank() ? blank : number(name, least, most);
  }

  /** A number within limits. */
  double number(String name, double least, double most) {
    return within(name, text(name), least, most);
  }

  /** Several numbers within limits, commas between. */
  List<Double> numbers(String name, double least, double most) {
    List<Double> numbers = new ArrayList<>();
    for (String part : text(name).split(",")) {
      if (!part.isBlank()) {
        numbers.add(within(name, part, least, most));
      }
    }
    return numbers;
  }

  /** Several rectangles, width first: {@code 48x24,30x30}. */
  List<double[]> rectangles(String name, double least, double most) {
    List<double[]> rectangles = new ArrayList<>();
    for (String part : text(name).split(",")) {
      if (!part.isBlank()) {
        String[] sides = part.split("x");
        if (sides.length != 2) {
          throw new RefusedException(
              "%s: \"%s\" is not a rectangle; write width x height, such as 48x24"
                  .formatted(name, part.strip()));
        }
        rectangles.add(
            new double[] {
              within(name, sides[0], least, most), within(name, sides[1], least, most)
            });
      }
    }
    return rectangles;
  }

  private static double within(String name, String text, double least, double most) {
    Unit<?> unit = name.equals("seconds") ? Units.RATIO : Units.endingOf(name);
    double number;
    try {
      number = Numbers.read(text, unit);
    } catch (RefusedException unreadable) {
      throw new RefusedException(name + ": " + unreadable.getMessage());
    }
    if (number < least || number > most) {
      throw new RefusedException(
          "%s is %s; it must be from %s to %s"
              .formatted(
                  name,
                  text.strip(),
                  sheathwright.figure.Shown.plain(least),
                  sheathwright.figure.Shown.plain(most)));
    }
    return number;
  }
}

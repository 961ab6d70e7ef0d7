package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;

/** What was typed after a solver's table: {@code kerf_in=1/8 stock_ft=8,10,12}. */
final class SolverOptions {

  /** How long a search may take. */
  static final SolverOption<Figure<Ratio>> SECONDS =
      new SolverOption<>(Field.number("seconds", "Time limit", Units.RATIO, 0.1, 3_600), "10");

  /** What a saw takes. */
  static final SolverOption<Figure<Length>> KERF =
      new SolverOption<>(Field.number("kerf_in", "Saw cut", Units.INCH, 0, 2), "1/8");

  /** Where a plan goes with what proves it. */
  static final SolverOption<Choice<String>> CERTIFICATE =
      new SolverOption<>(Field.text("certificate", "File for the plan and its proof"), "");

  private final Map<String, String> given;

  /**
   * @param given what was typed, by name
   * @param known every option that the solver knows
   */
  SolverOptions(Map<String, String> given, List<SolverOption<?>> known) {
    this.given = given;
    List<String> names = known.stream().<String>map(SolverOption::name).toList();
    given.forEach(
        (name, value) -> {
          if (!names.contains(name)) {
            throw new RefusedException(
                "\"%s=%s\" is not an option of this solver; it has %s"
                    .formatted(name, value, described(known)));
          }
        });
  }

  private static String described(List<SolverOption<?>> known) {
    return String.join(
        ", ", known.stream().map(option -> option.name() + "=" + option.preset()).toList());
  }

  private String text(SolverOption<?> option) {
    return given.getOrDefault(option.name(), option.preset());
  }

  /** What an option is: typed, or its preset. */
  <T extends Traced> T of(SolverOption<T> option) {
    return read(option, text(option));
  }

  /** The same as a plain number in the option's unit. */
  double number(SolverOption<? extends Figure<?>> option) {
    return of(option).value();
  }

  /** A number that need not be typed. */
  Optional<Double> numberIfGiven(SolverOption<? extends Figure<?>> option) {
    return text(option).isBlank() ? Optional.empty() : Optional.of(number(option));
  }

  /** A text that need not be typed. */
  Optional<String> textIfGiven(SolverOption<Choice<String>> option) {
    return text(option).isBlank() ? Optional.empty() : Optional.of(of(option).value());
  }

  /** Several numbers, commas between. */
  List<Double> numbers(SolverOption<? extends Figure<?>> option) {
    return parts(option).stream().map(part -> read(option, part).value()).toList();
  }

  /** Several rectangles, width first: {@code 48x24,30x30}. */
  List<double[]> rectangles(SolverOption<? extends Figure<?>> option) {
    List<double[]> rectangles = new ArrayList<>();
    for (String part : parts(option)) {
      String[] sides = part.split("x");
      if (sides.length != 2) {
        throw new TypedCell(option.name(), part)
            .refused(
                "\"%s\" is not a rectangle; write width x height, such as 48x24"
                    .formatted(part.strip()));
      }
      rectangles.add(new double[] {read(option, sides[0]).value(), read(option, sides[1]).value()});
    }
    return rectangles;
  }

  private List<String> parts(SolverOption<?> option) {
    return List.of(text(option).split(",")).stream().filter(part -> !part.isBlank()).toList();
  }

  private static <T extends Traced> T read(SolverOption<T> option, String text) {
    return option.field().read(option.name(), text, Source.GIVEN);
  }
}

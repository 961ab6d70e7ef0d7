package sheathwright.repl.whatif;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Units;

/**
 * Values sought that some value is known to give, of answers that rise, hump, wave or step: whether
 * none was found, how far from the present value it was found in thousandths, and how many values
 * were tried.
 */
public final class SeekWork implements BiFunction<Path, Long, List<long[]>> {

  private static final int SOUGHT = 400;
  private static final double THOUSANDTHS = 1000;

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    List<long[]> measured = new ArrayList<>();
    for (int sought = 0; sought < SOUGHT; sought++) {
      measured.add(measured(new Random(sought), sought));
    }
    return measured;
  }

  private static long[] measured(Random random, int kind) {
    double reach = Math.pow(10, 1 + 2 * random.nextDouble());
    DoubleUnaryOperator answer = answer(random, kind % 4, reach);
    double now = reach * random.nextDouble();
    double wanted = Math.rint(16 * reach * random.nextDouble()) / 16;
    Limits limits =
        Limits.between(0, kind / 4 % 2 == 0 ? reach : Double.POSITIVE_INFINITY, "invented");
    long[] tried = {0};
    Sought found =
        new Search(
                values -> {
                  tried[0] += values.size();
                  List<Optional<Figure<?>>> answers = new ArrayList<>();
                  values.forEach(
                      value ->
                          answers.add(
                              Optional.of(Figure.of(answer.applyAsDouble(value), Units.RATIO))));
                  return answers;
                },
                Figure.of(answer.applyAsDouble(wanted), Units.RATIO),
                Notches.of(Units.INCH, false),
                limits,
                now)
            .sought();
    boolean isFound = found instanceof Sought.Given;
    long away =
        isFound
            ? Math.round(Math.abs(((Sought.Given) found).found().value() - now) * THOUSANDTHS)
            : 0;
    return new long[] {isFound ? 0 : 1, away, tried[0]};
  }

  private static DoubleUnaryOperator answer(Random random, int shape, double reach) {
    double middle = reach * random.nextDouble();
    double waves = 2 + 6 * random.nextDouble();
    double step = reach / (3 + random.nextInt(40));
    return switch (shape) {
      case 0 -> x -> Math.pow(x / reach, 1 + waves / 4);
      case 1 -> x -> -Math.pow((x - middle) / reach, 2);
      case 2 -> x -> Math.sin(waves * Math.PI * x / reach);
      default -> x -> Math.ceil(x / step);
    };
  }
}

package sheathwright.sheathing.triage;

import java.util.List;
import java.util.stream.IntStream;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;

/** Inches in a sentence: as a ruler shows them where they lie on one of its lines. */
final class InchesWritten {

  private static final int LINES = 32;
  private static final int MOST = 3;

  private static final Figure<Ratio> PER_INCH =
      Figure.constant("ruler_lines_per_in", LINES, Units.RATIO, Source.ARITHMETIC);
  private static final Figure<Length> INCH = Figure.of(1, Units.INCH);
  private static final Figure<Length> LONGEST =
      Figure.constant("longest_on_the_ruler_in", MOST, Units.INCH, Source.ARITHMETIC);
  private static final Choice<String> ON_A_RULER = Choice.literal("/" + LINES);
  private static final Choice<String> AFTER = Choice.literal(" in");

  private static final Table RULER =
      new Table(
          "ruler",
          "a ruler",
          List.of("line"),
          List.of("inches"),
          IntStream.rangeClosed(0, MOST * LINES)
              .mapToObj(
                  line -> List.of(line + "/" + LINES, Lengths.mixed(line, LINES) + AFTER.value()))
              .toList(),
          Source.ARITHMETIC,
          List.of("Lines of a ruler in thirty-seconds of an inch, as a fraction."));

  private InchesWritten() {}

  /** A length in words. */
  static Choice<String> of(String name, Figure<Length> length) {
    Figure<Ratio> lines = length.dividedBy(INCH).times(PER_INCH).as(name + "_lines", Units.RATIO);
    Figure<Ratio> whole = lines.rounded().as(name + "_whole_lines", Units.RATIO);
    Condition isOnALine = Condition.all(lines.isTheSameAs(whole), length.isAtMost(LONGEST));
    Choice<String> line =
        Choice.choose(isOnALine, Choice.sentence(whole, ON_A_RULER), Choice.literal("0/" + LINES))
            .as(name + "_line");
    Choice<String> fraction = RULER.words("inches", line).as(name + "_fraction");
    return Choice.choose(isOnALine, fraction, Choice.sentence(length, AFTER)).as(name + "_written");
  }
}

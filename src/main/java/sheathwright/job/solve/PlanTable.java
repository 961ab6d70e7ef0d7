package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;

/**
 * The headings of a plan of cuts that carries what proves it. Each line says what it is: {@code
 * kerf}, {@code stock}, {@code piece}… A worth is a whole number of parts, so that whoever doubts
 * it can add up with a pencil.
 */
final class PlanTable {

  private static final double LONGEST = 10_000;
  private static final int MOST = 10_000;

  /** What a line of a plan is. */
  enum What implements Option<What> {
    KERF,
    TRIM,
    MONEY,
    STOCK,
    SHEET,
    OFFCUT,
    PIECE,
    STICK,
    PLACED,
    LEAST
  }

  static final Field<Choice<What>> WHAT = Field.word("what", "What the line is", What.class);
  static final Field<Figure<Length>> LENGTH = side("length_in", "Length");
  static final Field<Figure<Length>> WIDTH = side("width_in", "Width");
  static final Field<Figure<Length>> HEIGHT = side("height_in", "Height");
  static final Field<Figure<Length>> X = side("x_in", "From the left edge");
  static final Field<Figure<Length>> Y = side("y_in", "From the lower edge");
  static final Field<Figure<Money>> USD =
      Field.number("usd", "Dollars", Units.USD, 0, 100_000_000).ifKnown();
  static final Field<Figure<Ratio>> COUNT =
      Field.whole("count", "How many", Units.RATIO, 0, MOST).ifKnown();
  static final Field<Choice<String>> PARTS = Field.line("parts", "Worth, in parts").ifKnown();
  static final Field<Choice<String>> PIECES = Field.line("pieces", "What is cut").ifKnown();
  static final Field<Choice<String>> ON = Field.line("on", "The sheet it lies on").ifKnown();

  static final List<Field<?>> OF_STICKS = List.of(WHAT, LENGTH, USD, COUNT, PARTS, PIECES);
  static final List<Field<?>> OF_SHEETS = List.of(WHAT, WIDTH, HEIGHT, COUNT, PARTS, ON, X, Y);

  private final List<Field<?>> columns;
  private final List<List<String>> lines = new ArrayList<>();

  PlanTable(List<Field<?>> columns) {
    this.columns = columns;
  }

  private static Field<Figure<Length>> side(String name, String label) {
    return Field.number(name, label, Units.INCH, 0, LONGEST).ifKnown();
  }

  /** A cell of a line. */
  record Cell(Field<?> column, String text) {}

  static Cell cell(Field<?> column, String text) {
    return new Cell(column, text);
  }

  /** Adds a line. */
  void add(What what, Cell... cells) {
    String[] line = new String[columns.size()];
    Arrays.fill(line, "");
    line[0] = what.word();
    for (Cell cell : cells) {
      line[columns.indexOf(cell.column())] = cell.text();
    }
    lines.add(List.of(line));
  }

  List<String> headings() {
    return columns.stream().<String>map(Field::name).toList();
  }

  List<List<String>> lines() {
    return List.copyOf(lines);
  }
}

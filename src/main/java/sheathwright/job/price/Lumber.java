package sheathwright.job.price;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;
import sheathwright.leveling.plan.LevelPrices;
import sheathwright.wood.LumberSize;

/**
 * The sticks that the yard sells, by size and length. What a stick costs is looked for among them,
 * also when the workbook changes which one is needed.
 *
 * @param file that they stand in
 * @param lines one a stick
 */
public record Lumber(String file, List<Row> lines) {

  /** The stick that scabs and blocks are cut from. */
  public static final LumberSize BLOCK_SIZE = LumberSize.SIZE_2X4;

  /** Two scabs, or blocks for as many feet of edge. */
  public static final double BLOCK_FEET = 8;

  private static final Figure<Per<Money, Pieces>> NOT_SOLD = Figure.of(0, Units.USD_PER_PIECE);
  private static final Figure<Ratio> NO_LINE = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> A_LINE = Figure.of(1, Units.RATIO);
  private static final Figure<Length> ANOTHER_SIZE = Figure.of(0, Units.FOOT);

  /** Whether a stick is on sale. */
  public boolean has(LumberSize size, double feet) {
    return line(size, feet).isPresent();
  }

  private Optional<Row> line(LumberSize size, double feet) {
    return lines.stream()
        .filter(row -> LumberFields.LUMBER.stream().allMatch(field -> row.of(field) != null))
        .filter(row -> row.of(LumberFields.SIZE).value() == size)
        .filter(row -> row.of(LumberFields.LENGTH).value() == feet)
        .findFirst();
  }

  /**
   * That a stick which is needed is on sale.
   *
   * @param use what for, as a message says it: {@code for the sisters}
   * @throws ProblemsException if it is not
   */
  public void check(LumberSize size, double feet, String use) {
    if (!has(size, feet)) {
      throw new ProblemsException(List.of(new Problem(file, 0, "", missing(size, feet, use))));
    }
  }

  /** What is said where a stick is needed and not on sale. */
  public static String missing(LumberSize size, double feet, String use) {
    String length = Shown.plain(feet);
    return "a %s of %s ft is needed %s and is not in it; add a line with size %s, length_ft %s and its usd"
        .formatted(size.word(), length, use, size.word(), length);
  }

  /** The price of the stick that scabs and blocks are cut from; only where it is on sale. */
  public Figure<Per<Money, Pieces>> blockStick() {
    return needed(
        Choice.literal(BLOCK_SIZE),
        Figure.of(BLOCK_FEET, Units.FOOT),
        "block_stick_usd",
        "for scabs and blocks");
  }

  /**
   * The price of a stick, 0 where it is not on sale; none where two lines give it one.
   *
   * @param name of the price; the steps to it are named after it
   */
  public Figure<Per<Money, Pieces>> onSale(
      Choice<LumberSize> size, Figure<Length> length, String name) {
    Figure<Per<Money, Pieces>> price = NOT_SOLD;
    Figure<Ratio> said = NO_LINE;
    for (int i = 0; i < lines.size(); i++) {
      Row line = lines.get(i);
      Condition isIt =
          Condition.all(
              line.of(LumberFields.SIZE).isTheSameAs(size),
              line.of(LumberFields.LENGTH).isTheSameAs(length));
      price =
          Figure.choose(isIt, line.of(LumberFields.PRICE), price)
              .as("%s_by_line_%s".formatted(name, i + 1), Units.USD_PER_PIECE);
      said =
          Figure.choose(isIt, said.plus(A_LINE), said)
              .as("%s_lines_to_%s".formatted(name, i + 1), Units.RATIO);
    }
    return price
        .onlyIf(said.isAtMost(A_LINE), "the stick appears twice; give each stick one line")
        .as(name, Units.USD_PER_PIECE);
  }

  /**
   * The price of a stick that is needed.
   *
   * @param use what for, as a message says it: {@code for the sisters}
   * @throws ProblemsException if it is not on sale
   */
  public Figure<Per<Money, Pieces>> needed(
      Choice<LumberSize> size, Figure<Length> length, String name, String use) {
    Figure<Per<Money, Pieces>> price = onSale(size, length, name + "_if_sold");
    if (length.value() > 0) {
      check(size.value(), length.value(), use);
    }
    Condition isSold = Condition.any(length.isAtMost(ANOTHER_SIZE), price.isMoreThan(NOT_SOLD));
    return price
        .onlyIf(isSold, "the lumber on sale has no such stick; add a line for it")
        .as(name, Units.USD_PER_PIECE);
  }

  /** The sticks of one size; one of another size counts as one of no length. */
  public List<LevelPrices.Stick> sticks(Choice<LumberSize> size) {
    return lines.stream().map(line -> stick(line, size, lines.indexOf(line) + 1)).toList();
  }

  private static LevelPrices.Stick stick(Row line, Choice<LumberSize> size, int number) {
    return new LevelPrices.Stick(
        Figure.choose(
                line.of(LumberFields.SIZE).isTheSameAs(size),
                line.of(LumberFields.LENGTH),
                ANOTHER_SIZE)
            .as("sister_stick_%s_ft".formatted(number), Units.FOOT),
        line.of(LumberFields.PRICE));
  }

  /** All of them as a list; nothing if none is on sale. */
  public Optional<Roll> roll() {
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Roll.of(
                "lumber",
                "the lumber on sale",
                lines,
                LumberFields.LUMBER.stream().<Roll.Column<Row>>map(Row::column).toList()));
  }
}

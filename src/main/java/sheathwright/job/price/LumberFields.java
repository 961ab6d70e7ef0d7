package sheathwright.job.price;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;
import sheathwright.wood.LumberSize;

/** The columns of the table of sticks on sale. */
public final class LumberFields {

  public static final Field<Choice<LumberSize>> SIZE =
      Field.word("size", "Nominal size", LumberSize.class);

  public static final Field<Figure<Length>> LENGTH =
      Field.number("length_ft", "Length of the stick", Units.FOOT, 6, 24);

  public static final Field<Figure<Per<Money, Pieces>>> PRICE =
      Field.number("usd", "Price of one, before tax", Units.USD_PER_PIECE, 0.01, 1_000)
          .usually(1, 500);

  public static final List<Field<?>> LUMBER = List.of(SIZE, LENGTH, PRICE);

  private LumberFields() {}
}

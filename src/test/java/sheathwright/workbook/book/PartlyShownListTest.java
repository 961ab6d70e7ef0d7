package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.workbook.file.Particulars;

/** A list of which a page shows some columns is still the list that its sums are of. */
class PartlyShownListTest {

  @Test
  void theSumOfAShownColumn_pointsAtThatColumn() {
    Roll roll =
        Roll.of(
            "things",
            "the things",
            List.of("a", "b"),
            Roll.<String>column("thing", Choice::literal),
            Roll.column("hidden", thing -> Choice.literal("not shown")),
            Roll.column("amount_usd", thing -> Figure.of(thing.length() + 0.25, Units.USD)));
    Figure<Money> sum = roll.sum("amount_usd", Units.USD).as("all_usd", Units.USD);
    Book book = new Book(Particulars.of("A test", ""));
    Tab tab = book.tab("Things", 20, 12, 12, 12);

    tab.list(
        roll.only(List.of("thing", "amount_usd")),
        List.of("Thing", "Amount"),
        Arrays.asList(null, Units.USD));
    tab.listTotal("Together", sum, 1);
    byte[] bytes =
        book.finished(book.tab("Working", 9, 9, 9, 9, 9, 9, 9), book.tab("Tables", 9, 9));

    assertThat(Cells.byPoi(bytes)).containsValue(2.5).isEqualTo(Cells.written(bytes));
  }
}

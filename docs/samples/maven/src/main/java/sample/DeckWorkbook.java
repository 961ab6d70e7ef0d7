package sample;

import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pct;
import static sheathwright.sheathing.layout.SheetCounts.sheetsByArea;

import java.nio.file.Path;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.workbook.own.FigureBook;

/** A workbook of one's own figures: change the waste in it, and the sheets follow. */
public class DeckWorkbook {

  private record Hole(String what, double wide, double high) {

    Figure<Length> width() {
      return in(wide).as(what + "_wide_in", Units.INCH, Source.given("measured"));
    }

    Figure<Length> height() {
      return in(high).as(what + "_high_in", Units.INCH, Source.given("measured"));
    }
  }

  public static void main(String[] arguments) {
    Path file = Path.of(arguments.length == 0 ? "deck.xlsx" : arguments[0]);
    var eave = ft(42);
    var slope = ft("16-9 1/4");
    var deck = eave.times(slope).in(Units.SQUARE_FOOT);
    var waste = pct(10);
    var sheets = sheetsByArea(deck, waste);

    var holes = List.of(new Hole("chimney", 32, 24), new Hole("skylight", 22.5, 46));
    var roll =
        Roll.of(
            "holes",
            "Holes in the deck",
            holes,
            List.of(Roll.column("wide_in", Hole::width), Roll.column("high_in", Hole::height)));

    FigureBook.titled("A deck of our own")
        .section("What was measured")
        .figure("eave", eave)
        .figure("slope length", slope)
        .figure("waste", waste, "more on a roof with hips")
        .section("What is ordered")
        .figure("deck area", deck)
        .figure("sheets", sheets)
        .note("Measured from the ground; the deck is seen when the covering is off.")
        .table(roll)
        .save(file);
    System.out.println("wrote " + file.getFileName());
  }
}

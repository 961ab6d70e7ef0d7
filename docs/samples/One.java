import static sheathwright.fastening.count.NailCounts.nailsPerSheet;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pct;
import static sheathwright.roof.SheetSize.FOUR_BY_EIGHT;
import static sheathwright.sheathing.layout.SheetCounts.sheetsByArea;

import sheathwright.fastening.count.Nailing;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/** Sheets and nails of a roof, and what is said of a number that nobody means. */
public class One {

  public static void main(String[] arguments) {
    var deck = ft(42).times(ft("16-9 1/4")).in(Units.SQUARE_FOOT);
    var sheets = sheetsByArea(deck, pct(10));
    var nails = nailsPerSheet(in(16), Nailing.edge(in(6)).field(in(12)), FOUR_BY_EIGHT);
    System.out.println(sheets + ", " + nails);

    var wrong = sheetsByArea(deck, pct(140)); // nothing is thrown yet
    System.out.println("refused before it is asked: " + wrong.refusal().isPresent());
    try {
      System.out.println(wrong.value());
    } catch (RefusedException refused) {
      System.out.println(refused.getMessage());
    }
  }
}

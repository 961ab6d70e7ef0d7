package sheathwright.workbook.paper;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.life.bill.AgreedSum;
import sheathwright.life.bill.Agreement;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** What was agreed, line by line, with what its total came to. */
final class AgreedList {

  private static final int AMOUNT = 4;

  private AgreedList() {}

  static void write(Tab tab, Agreement agreement) {
    List<AgreedSum> lines =
        Stream.of(agreement.lines(), agreement.options()).flatMap(List::stream).toList();
    tab.heading("What was agreed");
    tab.list(
        Roll.of(
            "agreed",
            "what was agreed",
            lines,
            Paper.<AgreedSum>words("what", AgreedSum::what),
            Paper.words("unit", AgreedSum::unit),
            Roll.column("quantity", AgreedSum::quantity),
            Roll.column("each_usd", AgreedSum::each),
            Roll.column("amount_usd", AgreedSum::amount)),
        List.of("For", "Unit", "How many", "Each", "Amount"),
        Sections.units(null, null, Units.RATIO, Units.USD, Units.USD));
    tab.listTotal("Agreed", agreement.total(), AMOUNT);
  }
}

package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Roll;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.framing.stop.StopReports;
import sheathwright.framing.stop.StopTable;
import sheathwright.job.Estimate;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;

/**
 * The page of what stops: each finding of the job with who decides and what may go on meanwhile, in
 * the words of its reader, and below it everything at which a crew stops and calls.
 */
final class StopPage {

  /** As the page is called. */
  static final String TAB = "What stops";

  private static final String ALL = "Every stop";
  private static final int[] WIDTHS = {24, 50, 26, 14, 8, 8};
  private static final List<Unit<?>> FOUR_TEXTS = Sections.units(null, null, null, null);

  private StopPage() {}

  static Tab tab(Book book, String subtitle) {
    return Sections.titled(book.tab(TAB, WIDTHS), subtitle);
  }

  /** Everything at which a crew stops and calls, in full, behind what is handed out. */
  static void everyStop(Book book, String subtitle) {
    Tab tab = Sections.titled(book.tab(ALL, WIDTHS), subtitle).keptBack();
    tab.heading("Whoever finds one of these stops and calls");
    StopTable.forTheTrade().forEach(tab::table);
  }

  static void write(Tab tab, Estimate estimate) {
    StopReports stops = estimate.framing().stops();
    tab.heading("Before anything is repaired");
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    tab.paragraph(
        "Who stands at the head is asked first. Each of the others decides about what was found for them, and nobody decides in another's place.");
    if (!stops.findings().rows().isEmpty()) {
      findings(tab, stops);
    }
    tab.note(
        "Everything at which a crew stops and calls, found here or not, stands on the tab "
            + ALL
            + ".");
  }

  private static void findings(Tab tab, StopReports stops) {
    tab.heading("Who decides, and what may go on meanwhile");
    tab.list(
        stops.findings(),
        List.of("Found", "What may go on", "Who decides", "Report", "Stops", "Order"),
        Sections.units(null, null, null, null, Units.RATIO, Units.RATIO));
    told(tab, "To the crew", stops.toCrew(), "Where");
    told(tab, "For the inspector and the office", stops.toInspector(), "Source");
  }

  private static void told(Tab tab, String heading, Roll roll, String third) {
    tab.heading(heading);
    tab.list(roll, List.of("Found", heading, third, "Report"), FOUR_TEXTS);
  }
}

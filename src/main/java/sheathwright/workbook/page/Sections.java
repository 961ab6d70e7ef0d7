package sheathwright.workbook.page;

import java.util.Arrays;
import java.util.List;
import sheathwright.figure.Roll;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.QuoteLines;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.book.TabCell;

/** Parts that several pages share. */
public final class Sections {

  private static final int SUBTITLE_CHARACTERS = 68;
  private static final int STATE_CHARACTERS = 40;
  private static final double SHARE_OF_THE_STATE = 0.35;

  private Sections() {}

  public static Tab tab(Book book, String name, String subtitle) {
    return titled(book.tab(name, 37, 14, 12, 13, 14, 15), subtitle);
  }

  static Tab knownTab(Book book, String subtitle) {
    return titled(book.tab("What we know", 34, 14, 12, 12, 12, 12, 12), subtitle);
  }

  static Tab foundTab(Book book, String subtitle) {
    return titled(book.tab("What we found", 15, 14, 18, 15, 15, 14, 14), subtitle);
  }

  public static Tab workingTab(Book book, String subtitle) {
    return titled(book.tab("Working", 30, 13, 11, 8, 9, 54, 32), subtitle).keptBack();
  }

  public static Tab tablesTab(Book book, String subtitle) {
    return titled(book.tab("Tables", 40, 18, 18, 17, 8, 8, 8, 8, 8, 9, 12, 11), subtitle)
        .keptBack();
  }

  public static Tab titled(Tab tab, String subtitle) {
    for (int column = 0; column < tab.columns(); column++) {
      tab.text(0, column, column == 0 ? tab.name() : "", Part.TITLE);
      tab.text(1, column, column == 0 ? subtitle : "", Part.SUBTITLE);
    }
    tab.row(0).height(28);
    tab.row(1).height(18);
    return tab;
  }

  /** Says at the top of every tab how the self-check stands. */
  static void titles(Book book, Selfcheck selfcheck) {
    for (Tab tab : book.tabs()) {
      int column = stateColumn(tab);
      tab.across(1, 0, column - 1);
      tab.across(1, column, tab.columns() - 1);
      TabCell cell = tab.cell(1, column);
      book.later(notation -> book.writeLink(cell, selfcheck.state(), notation));
    }
  }

  /** Where the self-check's state begins: behind the subtitle, with room for its own words. */
  private static int stateColumn(Tab tab) {
    double wanted = Math.min(STATE_CHARACTERS, tab.characters() * SHARE_OF_THE_STATE);
    int column = 1;
    int before = tab.width(0);
    while (column < tab.columns() - 1
        && before < SUBTITLE_CHARACTERS
        && tab.characters() - before - tab.width(column) >= wanted) {
      before += tab.width(column++);
    }
    return column;
  }

  static void lines(Tab tab, Estimate estimate, QuoteLines quote) {
    tab.heading("The quote");
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    tab.list(
        quote.roll(),
        List.of("For", "How many", "Unit", "Each", "Amount"),
        units(null, Units.RATIO, null, Units.USD, Units.USD));
    tab.listTotal("Total", quote.total(), 4);
    quote.held().ifPresent(held -> held(tab, held));
  }

  /** What is not sold before somebody licensed has decided, with its prices. */
  private static void held(Tab tab, Roll held) {
    tab.heading("After the engineer's decision");
    tab.note(
        "Not in the total and not agreed: work on the rafters, at these prices, if a licensed engineer's letter allows it."
            + " None stands here where nothing stops the repair and the rafters were looked at.");
    tab.list(
        held,
        List.of("For", "How many", "Unit", "Each", "Amount, not in the total"),
        units(null, Units.RATIO, null, Units.USD, Units.USD));
  }

  /** What the covering's maker asks for, on a tab of its own, if the job says so. */
  static void maker(Book book, Estimate estimate, String subtitle) {
    estimate
        .maker()
        .ifPresent(
            roll -> {
              Tab tab = titled(book.tab("The maker", 31, 9, 10, 11, 11, 8, 8, 22), subtitle);
              tab.heading("What the covering's maker asks of the deck");
              tab.note(
                  "Filled from the maker's own engineering. A warranty rests on it, and it overrides common practice.");
              tab.list(
                  roll,
                  List.of(
                      "Requirement",
                      "Unit",
                      "Sense",
                      "Required",
                      "Found",
                      "Met",
                      "Unmet",
                      "Evidence"),
                  units(null, null, null, Units.RATIO, Units.RATIO, null, Units.RATIO, null));
            });
  }

  static void cautions(Tab tab) {
    tab.heading("On the roof");
    Cautions.onTheRoof().forEach(tab::paragraph);
  }

  public static List<Unit<?>> units(Unit<?>... units) {
    return Arrays.asList(units);
  }
}

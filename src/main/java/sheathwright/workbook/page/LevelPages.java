package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Leveling;
import sheathwright.job.WhenDone;
import sheathwright.leveling.plan.Sisters.SisterStock;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.SagChart;

/** Parts of pages that show how the rafters stand to the string, and how they will. */
final class LevelPages {

  private static final int RAFTER = 1;
  private static final int BEFORE = 5;
  private static final int AFTER = 6;

  private final Book book;
  private final Estimate estimate;
  private Listing readings;

  LevelPages(Book book, Estimate estimate) {
    this.book = book;
    this.estimate = estimate;
  }

  /** The readings as the crew took them. */
  void readings(Tab tab) {
    estimate
        .rafterLeveling()
        .flatMap(Leveling::atMiddle)
        .ifPresent(
            middle -> {
              readings =
                  tab.listUnder(
                      "String-line readings at mid-length",
                      "Readings",
                      middle.readings(),
                      List.of(
                          "Plane",
                          "Rafter",
                          "Drop, in",
                          "Sister",
                          "Shim",
                          "Before, in",
                          "After, in"),
                      Sections.units(
                          null,
                          null,
                          Units.INCH,
                          Units.PIECE,
                          Units.PIECE,
                          Units.INCH,
                          Units.INCH));
            });
  }

  /** The rafters that were read again when the work was done. */
  void whenDone(Tab tab) {
    WhenDone.roll(WhenDone.of(estimate))
        .ifPresent(
            done -> {
              tab.heading("Rafters when the work is done, below the string");
              tab.list(
                  done,
                  List.of("Plane", "Rafter", "Meant, in", "Read, in", "Further below, in"),
                  Sections.units(null, null, Units.INCH, Units.INCH, Units.INCH));
            });
  }

  /** Each plane's rafters before and after, side by side. */
  void charts(Tab tab) {
    if (readings == null) {
      return;
    }
    List<Traced> planes = readings.roll().cellsOf("plane");
    int first = 0;
    for (int row = 1; row <= planes.size(); row++) {
      boolean isNext =
          row == planes.size() || !planes.get(row).plain().equals(planes.get(first).plain());
      if (isNext) {
        String plane = planes.get(first).plain();
        SagChart.draw(
            book,
            tab,
            "Plane " + plane + ", before and after",
            "rafters, at mid-length",
            new SagChart.Part(plane, readings, first, row - 1, RAFTER, BEFORE, AFTER));
        first = row;
      }
    }
  }

  /** What is bought for it. */
  void stock(Tab tab) {
    estimate
        .rafterLeveling()
        .ifPresent(
            leveling -> {
              tab.heading("Sisters and shims");
              tab.linkedVerdict("The rafters", estimate.framing().decision());
              tab.entry("Rafters to sister", leveling.sisters(), "drop above the tolerance");
              tab.entry("Rafters to shim", leveling.shims(), "drop between the two tolerances");
              tab.entry("Nails in all sisters", leveling.nails(), "");
              leveling.atMiddle().ifPresent(middle -> sticks(tab, middle.stock()));
            });
  }

  private static void sticks(Tab tab, SisterStock stock) {
    tab.entry("Length of each sister", stock.length(), "");
    tab.entry("Stick to buy", stock.stock(), "next of 8 to 20 ft");
    tab.entry(
        "Next shorter stick is short by",
        stock.nearMiss(),
        "0 unless it is under an inch: look whether a cut saves it");
    tab.entry("Sister's top above the old rafter at its ends", stock.endOffset(), "");
  }
}

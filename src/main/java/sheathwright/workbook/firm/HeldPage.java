package sheathwright.workbook.firm;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.life.firm.Held;
import sheathwright.life.firm.HistoryRates;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.HeldChart;
import sheathwright.workbook.page.Sections;

/** Whether the firm's forecasts of bad sheets have held, percentile by percentile. */
final class HeldPage {

  private static final Source TRIED =
      Source.derived("each closed job forecast from all others; exact limits of a share");
  private static final int NAME = 0;
  private static final int MEANT = 1;
  private static final int HELD = 4;

  /** A percentile with its figures, each made once. */
  private record Line(
      String name,
      Figure<Ratio> meant,
      Figure<Ratio> within,
      Figure<Ratio> of,
      Figure<Ratio> least,
      Figure<Ratio> most) {

    static Line of(Held held) {
      return new Line(
          Shown.text("P%.0f", held.chance() * 100),
          percent("meant_pct", held.chance()),
          Figure.constant("within", held.houses().within(), Units.RATIO, TRIED),
          Figure.constant("of", held.houses().houses(), Units.RATIO, TRIED),
          percent("least_pct", held.houses().least()),
          percent("most_pct", held.houses().most()));
    }

    private static Figure<Ratio> percent(String name, double share) {
      return Figure.constant(name, share * 100, Units.PERCENT, TRIED);
    }

    Figure<Ratio> held() {
      return within.dividedBy(of).as("held_pct", Units.PERCENT, Source.ARITHMETIC);
    }
  }

  private HeldPage() {}

  static void write(Book book, Tab tab, HistoryRates history) {
    tab.heading("What was forecast, and what was found");
    if (history.lack().isPresent()) {
      tab.caution(history.lack().get());
      return;
    }
    tab.paragraph(
        "Each of %s closed jobs of history.csv was forecast from all others: how many stayed within the percentile that was meant. Held above meant is caution; held below meant is a forecast that says too few. Least and most are what so few jobs leave open, 95 of 100."
            .formatted(history.jobs()));
    List<Line> lines = history.curve().stream().map(Line::of).toList();
    Roll roll =
        Roll.of(
            "held",
            "the percentiles",
            lines,
            Roll.<Line>column("percentile", line -> Choice.literal(line.name())),
            Roll.column("meant_pct", Line::meant),
            Roll.column("within", Line::within),
            Roll.column("of", Line::of),
            Roll.column("held_pct", Line::held),
            Roll.column("least_pct", Line::least),
            Roll.column("most_pct", Line::most));
    Listing listing =
        tab.list(
            roll,
            List.of(
                "Percentile", "Meant, %", "Within", "Of jobs", "Held, %", "Least, %", "Most, %"),
            Sections.units(
                null,
                Units.PERCENT,
                Units.RATIO,
                Units.RATIO,
                Units.PERCENT,
                Units.PERCENT,
                Units.PERCENT));
    HeldChart.draw(book, tab, "Meant and held", new HeldChart.Part(listing, NAME, MEANT, HELD));
  }
}

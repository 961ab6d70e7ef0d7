package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;
import sheathwright.job.triage.PullFields;
import sheathwright.job.zone.ZoneFields;
import sheathwright.workbook.told.Sheaf;

/**
 * The screws that were pulled out of a deck to see what they hold, for whoever made the covering.
 */
final class PulledScrews {

  private PulledScrews() {}

  /** What screws held that were pulled, beside what is asked of one. */
  static void on(Sheaf sheaf, Estimate estimate) {
    List<Row> tests = estimate.job().lines(JobTable.PULL_TESTS);
    if (tests.isEmpty()) {
      return;
    }
    Figure<Force> asked = estimate.askedOfAScrew();
    List<List<String>> rows = new ArrayList<>();
    List<Double> held = new ArrayList<>();
    for (Row test : tests) {
      held.add(test.of(PullFields.HELD).value());
      rows.add(
          List.of(
              test.of(PullFields.SCREW).plain(),
              said(
                  test,
                  test.has(OrderFields.OF_SHEET) ? OrderFields.OF_SHEET : ZoneFields.ITS_PLANE),
              Spoken.of(test.of(PullFields.HELD)),
              gave(test),
              String.join(
                  ", ",
                  Stream.of(said(test, PullFields.BY), Moment.spoken(said(test, PullFields.ON)))
                      .filter(text -> !text.isEmpty())
                      .toList())));
    }
    Paper.table(
        sheaf,
        "pulled",
        "Screws pulled out of the deck to see what they hold",
        List.of("Screw", "Where", "Held", "Gave way", "By, on"),
        rows);
    Collections.sort(held);
    double mean = held.stream().mapToDouble(each -> each).average().orElseThrow();
    sheaf
        .tab()
        .paragraph(
            "%s pulled: the least held %s, on the average %s. %s A load at which a screw gives way is not one that may be counted on; by how much it is divided, the maker says."
                .formatted(
                    held.size() == 1 ? "1 screw" : held.size() + " screws",
                    Spoken.of(Figure.of(held.get(0), Units.POUND)),
                    Spoken.of(Figure.of(mean, Units.POUND)),
                    asked.refusal().isPresent()
                        ? "Nobody has said what is asked of one."
                        : "Of one screw %s is asked; %s held less."
                            .formatted(
                                Spoken.of(asked.in(Units.POUND)),
                                held.stream()
                                    .filter(each -> each < asked.in(Units.POUND).value())
                                    .count())));
  }

  private static String gave(Row test) {
    return test.read(PullFields.BROKE)
        .map(
            broke ->
                switch (broke.value()) {
                  case WOOD -> "the wood";
                  case SCREW -> "the screw";
                  case NONE -> "nothing, so far";
                })
        .orElse("");
  }

  private static String said(Row row, Field<Choice<String>> field) {
    return row.has(field) ? row.of(field).value() : "";
  }
}

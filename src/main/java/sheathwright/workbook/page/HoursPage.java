package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.life.LifeFields;
import sheathwright.life.supply.WorkHours;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;

/** The hours of the crew, task by task, for the office alone. */
final class HoursPage {

  private static final List<String> HEADINGS =
      List.of("Task", "Unit", "How many", "Hours each", "Hours");
  private static final List<Unit<?>> UNITS =
      Sections.units(null, null, Units.RATIO, Units.RATIO, Units.RATIO);

  private HoursPage() {}

  static Tab tab(Book book, String subtitle) {
    return Sections.titled(book.tab("Hours", 42, 12, 13, 13, 14), subtitle).onOnePage();
  }

  static void write(Tab tab, Estimate estimate, WorkHours hours) {
    tab.heading("Hours of labor, by task");
    tab.list(hours.roll(), HEADINGS, UNITS);
    tab.listTotal("In all", hours.total(), 4);
    tab.note("Stripping the old covering and laying the new one are not among them.");
    if (!hours.unrated().isEmpty()) {
      tab.caution(
          "Not in these hours, for want of a rate: %s."
              .formatted(String.join("; ", hours.unrated())));
    }
    hours
        .waiting()
        .ifPresent(
            waiting -> {
              tab.heading("After the engineer's decision");
              tab.note("Not in the hours above.");
              tab.linkedVerdict("The rafters", estimate.framing().decision());
              tab.list(waiting, HEADINGS, UNITS);
            });
    tab.heading("Days on the roof");
    hours
        .days()
        .ifPresentOrElse(
            days -> {
              Job job = estimate.job();
              tab.link(LifeFields.CREW.label(), job.fact(LifeFields.CREW), "");
              tab.link(LifeFields.CREW_HOURS.label(), job.fact(LifeFields.CREW_HOURS), "");
              tab.link(LifeFields.EFFICIENCY.label(), job.fact(LifeFields.EFFICIENCY), "");
              tab.shown("Hours of labor in a day", hours.ofADay().orElseThrow(), "");
              tab.total("Days", days, "up to the next quarter");
            },
            () ->
                tab.paragraph(
                    "Days are not said: they want crew, crew_hours and efficiency_pct in job.csv."));
  }
}

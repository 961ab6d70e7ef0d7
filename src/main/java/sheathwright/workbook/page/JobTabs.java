package sheathwright.workbook.page;

import java.util.List;
import java.util.Optional;
import sheathwright.job.Estimate;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;

/**
 * The tabs of a job's workbook, in the order in which they stand. What nobody hands out stands
 * last.
 */
record JobTabs(
    Tab front,
    Tab known,
    Tab found,
    Tab stops,
    Tab work,
    List<CrewPage> crew,
    Optional<Tab> order,
    Optional<Tab> hours,
    Tab layout,
    Tab costs,
    Optional<Tab> sheets,
    Optional<Tab> marks,
    Tab proof,
    Tab check,
    Tab working,
    Tab tables) {

  /** Makes the tabs and writes those that say the same to everybody. */
  static JobTabs of(Book book, Estimate estimate, String subtitle) {
    boolean isOffice = book.audience().isOffice();
    Tab front = Sections.tab(book, "Read me first", subtitle);
    Tab known = Sections.knownTab(book, subtitle);
    Tab found = Sections.foundTab(book, subtitle);
    Tab stops = StopPage.tab(book, subtitle);
    Tab work = Sections.tab(book, "What to do", subtitle);
    SurveyPages.write(book, estimate, subtitle);
    List<CrewPage> crew = isOffice ? CrewPage.of(book, estimate, subtitle) : List.of();
    Optional<Tab> order = isOffice ? Optional.of(OrderPage.tab(book, subtitle)) : Optional.empty();
    Optional<Tab> hours = isOffice ? Optional.of(HoursPage.tab(book, subtitle)) : Optional.empty();
    Tab layout = Sections.tab(book, isOffice ? "Layout" : "What to buy", subtitle);
    Tab costs = Sections.tab(book, "What it costs", subtitle);
    Optional<Tab> sheets =
        isOffice ? Optional.of(SheetsPage.tab(book, subtitle)) : Optional.empty();
    Tab proof = ProofPage.tab(book, subtitle);
    Sections.maker(book, estimate, subtitle);
    Optional<Tab> marks =
        isOffice && !estimate.deck().marked().isEmpty()
            ? Optional.of(MarksPage.tab(book, subtitle))
            : Optional.empty();
    Tab check = Sections.tab(book, "Self-check", subtitle);
    SurveyPages.working(book, estimate, subtitle);
    Tab working = Sections.workingTab(book, subtitle);
    Tab tables = Sections.tablesTab(book, subtitle);
    book.draws(estimate.solutions());
    return new JobTabs(
        front, known, found, stops, work, crew, order, hours, layout, costs, sheets, marks, proof,
        check, working, tables);
  }
}

package sheathwright.workbook.page;

import java.util.List;
import java.util.Optional;
import sheathwright.job.Estimate;
import sheathwright.life.bill.Accounts;
import sheathwright.life.found.FoundWork;
import sheathwright.life.record.Revisions;
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
    Tab order,
    Tab hours,
    Tab layout,
    Tab costs,
    Tab sheets,
    Optional<WaysPage> ways,
    Optional<Tab> marks,
    Tab proof,
    Tab check,
    Tab working,
    Tab tables) {

  /** Makes the tabs and writes those that say the same to everybody. */
  static JobTabs of(
      Book book,
      Estimate estimate,
      FoundWork marked,
      Revisions revisions,
      String subtitle,
      Optional<Accounts> agreed) {
    Tab front = Sections.tab(book, "Read me first", subtitle);
    Tab known = Sections.knownTab(book, subtitle);
    Tab found = Sections.foundTab(book, subtitle);
    Tab stops = StopPage.tab(book, subtitle);
    Tab work = Sections.tab(book, "What to do", subtitle);
    SurveyPages.write(book, estimate, subtitle);
    List<CrewPage> crew = CrewPage.of(book, estimate, subtitle);
    Tab order = OrderPage.tab(book, subtitle);
    Tab hours = HoursPage.tab(book, subtitle);
    Tab layout = Sections.tab(book, "Layout", subtitle);
    Tab costs = Sections.tab(book, "What it costs", subtitle);
    Tab sheets = SheetsPage.tab(book, subtitle);
    Optional<Tab> pricing = WaysPage.tab(book, estimate, subtitle);
    LeakPage.write(book, estimate, subtitle, agreed);
    Tab proof = ProofPage.tab(book, subtitle);
    Sections.maker(book, estimate, subtitle);
    Tab check = Sections.titled(book.tab("Self-check", 76, 14, 10, 6, 5, 5), subtitle);
    Optional<Tab> marks =
        estimate.deck().marked().isEmpty()
            ? Optional.empty()
            : Optional.of(MarksPage.tab(book, subtitle));
    TablePages.write(book, estimate, subtitle);
    HistoryPage.write(book, revisions, subtitle);
    StopPage.everyStop(book, subtitle);
    SurveyPages.working(book, estimate, subtitle);
    Optional<WaysPage> ways =
        pricing.map(
            page -> WaysPage.of(book, estimate, marked, page, WaysPage.chancesTab(book, subtitle)));
    Tab working = Sections.workingTab(book, subtitle);
    Tab tables = Sections.tablesTab(book, subtitle);
    book.draws(estimate.solutions());
    return new JobTabs(
        front, known, found, stops, work, crew, order, hours, layout, costs, sheets, ways, marks,
        proof, check, working, tables);
  }
}

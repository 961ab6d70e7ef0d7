package sheathwright.workbook.page;

import java.util.Optional;
import sheathwright.job.Estimate;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;

/**
 * The tabs of a job's workbook, in the order in which they stand; the homeowner's has those of the
 * office but for Sheets and Marks.
 */
record JobTabs(
    Tab front,
    Tab known,
    Tab found,
    Tab stops,
    Tab work,
    Tab buy,
    Tab costs,
    Optional<Tab> sheets,
    Optional<Tab> marks,
    Tab proof,
    Tab working,
    Tab tables,
    Tab check) {

  /** Makes the tabs and writes those that say the same to everybody. */
  static JobTabs of(Book book, Estimate estimate, String subtitle) {
    Tab front = Sections.tab(book, "Read me first", subtitle);
    Tab known = Sections.knownTab(book, subtitle);
    Tab found = Sections.foundTab(book, subtitle);
    Tab stops = StopPage.tab(book, subtitle);
    Tab work = Sections.tab(book, "What to do", subtitle);
    SurveyPages.write(book, estimate, subtitle);
    Tab buy = Sections.tab(book, "What to buy", subtitle);
    Tab costs = Sections.tab(book, "What it costs", subtitle);
    Optional<Tab> sheets =
        book.audience().isOffice() ? Optional.of(SheetsPage.tab(book, subtitle)) : Optional.empty();
    Tab proof = ProofPage.tab(book, subtitle);
    Sections.maker(book, estimate, subtitle);
    Optional<Tab> marks =
        book.audience().isOffice() && !estimate.deck().marked().isEmpty()
            ? Optional.of(MarksPage.tab(book, subtitle))
            : Optional.empty();
    Tab working = Sections.workingTab(book, subtitle);
    Tab tables = Sections.tablesTab(book, subtitle);
    Tab check = Sections.tab(book, "Self-check", subtitle);
    book.draws(estimate.solutions());
    return new JobTabs(
        front, known, found, stops, work, buy, costs, sheets, marks, proof, working, tables, check);
  }
}

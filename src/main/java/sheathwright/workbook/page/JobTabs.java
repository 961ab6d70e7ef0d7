package sheathwright.workbook.page;

import sheathwright.job.Estimate;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;

/**
 * The tabs of a job's workbook, in the order in which they stand; the office's and the homeowner's
 * have the same.
 */
record JobTabs(
    Tab front,
    Tab known,
    Tab found,
    Tab stops,
    Tab work,
    Tab buy,
    Tab costs,
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
    Tab proof = ProofPage.tab(book, subtitle);
    Sections.maker(book, estimate, subtitle);
    Tab working = Sections.workingTab(book, subtitle);
    Tab tables = Sections.tablesTab(book, subtitle);
    Tab check = Sections.tab(book, "Self-check", subtitle);
    book.draws(estimate.solutions());
    return new JobTabs(front, known, found, stops, work, buy, costs, proof, working, tables, check);
  }
}

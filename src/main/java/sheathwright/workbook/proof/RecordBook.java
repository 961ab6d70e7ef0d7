package sheathwright.workbook.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.table.Problem;
import sheathwright.proof.Difference;
import sheathwright.proof.OfficeCases;
import sheathwright.proof.ProgramPrint;
import sheathwright.proof.Standing;
import sheathwright.proof.Tested;
import sheathwright.proof.Told;
import sheathwright.workbook.audit.Recomputed;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.file.Program;
import sheathwright.workbook.page.JobBooks;
import sheathwright.workbook.page.Sections;

/**
 * The record of one verification, to sign: who, where and when, what was run, and what came of each
 * function, of the workbooks, of the planted values and of the office's own cases.
 */
public final class RecordBook {

  private static final String SUBTITLE = "What was verified, and how it came out";
  private static final Source RUN = Source.derived("counted by this run");

  private final Verification all;
  private final LocalDate day;
  private final Book book;

  private RecordBook(Verification all, LocalDate day) {
    this.all = all;
    this.day = day;
    this.book = new Book(new Particulars("Verification record", SUBTITLE, "", Optional.of(day)));
    book.showCountsPlainly();
    book.leaveOutEmptyPages();
  }

  /** The bytes of an .xlsx file. */
  public static byte[] bytes(Verification all, LocalDate day) {
    RecordBook record = new RecordBook(all, day);
    return JobBooks.laidOut(record.book, record::written);
  }

  private byte[] written() {
    Tab record = Sections.titled(book.tab("Record", 26, 16, 16, 16, 16), SUBTITLE);
    Tab functions = Sections.titled(book.tab("Functions", 26, 8, 8, 8, 18, 18, 34), SUBTITLE);
    Tab own = Sections.titled(book.tab("Your own cases", 26, 26, 8, 8, 30), SUBTITLE);
    front(record);
    functions(functions);
    own(own);
    return book.finished(Sections.workingTab(book, SUBTITLE), Sections.tablesTab(book, SUBTITLE));
  }

  private void front(Tab tab) {
    tab.heading(all.holds() ? "All holds" : "NOT all holds");
    tab.paragraph(
        "%d of %d functions have certified cases, %,d in all. Each was run on the machine named below; nothing was taken from an earlier run."
            .formatted(all.functionsWithCases(), all.tested().size(), all.cases()));
    tab.heading("Where and when");
    tab.fact("Day", day.toString());
    tab.fact("Program", Program.NAME);
    tab.fact("Java", System.getProperty("java.version") + ", " + System.getProperty("java.vendor"));
    tab.fact("System", System.getProperty("os.name") + ", " + System.getProperty("os.arch"));
    tab.heading("Fingerprints (SHA-256)");
    for (ProgramPrint print : all.prints()) {
      tab.paragraph("%s, %s: %s".formatted(print.what(), print.about(), print.digits()));
    }
    tab.heading("Workbooks worked out anew");
    for (Recomputed book : all.books()) {
      tab.paragraph(
          "%s: %,d formulas, %s"
              .formatted(
                  book.name(),
                  book.formulas(),
                  book.differing().isEmpty()
                      ? "none differs"
                      : String.join("; ", book.differing())));
    }
    tab.heading("Wrong values that were planted");
    all.controls()
        .forEach(
            control ->
                tab.paragraph(control.what() + ": " + (control.isFound() ? "found" : "NOT FOUND")));
    List<Problem> wrong = all.tested().stream().flatMap(each -> each.problems().stream()).toList();
    if (!wrong.isEmpty()) {
      tab.heading("What does not hold");
      wrong.forEach(problem -> tab.caution(problem.toString()));
    }
    tab.heading("Signed");
    tab.note(
        "Results are planning help: local code and licensed practice decide. Built roofs were not compared with anything.");
    Letter.on(tab).signature("Run by, at, date");
    Letter.on(tab).signature("Checked by, license, date");
  }

  private void functions(Tab tab) {
    tab.heading("Certified cases, function by function");
    List<Tested> tested = all.tested();
    Roll roll =
        Roll.of(
            "verified",
            "functions verified",
            tested,
            Roll.<Tested>column("function", each -> Choice.literal(each.card().name())),
            Roll.column("cases", each -> count("cases", each, t -> t.outcomes().size())),
            Roll.column("hold", each -> count("hold", each, Tested::holding)),
            Roll.column("fail", each -> count("fail", each, Tested::failing)),
            Roll.column("largest", each -> Choice.literal(worst(each, Difference::inWords))),
            Roll.column("share", each -> Choice.literal(worst(each, Difference::shareInWords))),
            Roll.column("standing", each -> Choice.literal(Standing.of(each).words())));
    tab.list(
        roll,
        List.of(
            "Function",
            "Cases",
            "Hold",
            "Fail",
            "Largest difference",
            "Of its tolerance",
            "Standing"),
        Sections.units(null, Units.RATIO, Units.RATIO, Units.RATIO, null, null, null));
    tab.total("Cases in all", roll.sum("cases", Units.RATIO).as("cases", Units.RATIO), "");
    tab.total("Hold", roll.sum("hold", Units.RATIO).as("cases_holding", Units.RATIO), "");
  }

  private static String worst(Tested tested, Function<Difference, String> told) {
    return tested.worst().map(told).filter(text -> !text.isEmpty()).orElse("–");
  }

  private static Figure<Ratio> count(String name, Tested tested, ToDoubleFunction<Tested> of) {
    return Figure.constant(name, of.applyAsDouble(tested), Units.RATIO, RUN);
  }

  private void own(Tab tab) {
    List<Own> lines = new ArrayList<>();
    for (OfficeCases table : all.own()) {
      table.tested().forEach(each -> lines.add(new Own(table.file(), each)));
    }
    if (lines.isEmpty()) {
      return;
    }
    tab.heading("Cases of the office's own engineer");
    Roll roll =
        Roll.of(
            "own",
            "the office's own cases",
            lines,
            Roll.<Own>column("table", each -> Choice.literal(each.table())),
            Roll.column("function", each -> Choice.literal(each.tested().card().name())),
            Roll.column(
                "own_cases", each -> count("own_cases", each.tested(), t -> t.outcomes().size())),
            Roll.column("own_hold", each -> count("own_hold", each.tested(), Tested::holding)),
            Roll.column("nearness", each -> Choice.literal(Told.nearness(each.tested()))));
    tab.list(
        roll,
        List.of("Table", "Function", "Cases", "Hold", "How nearly"),
        Sections.units(null, null, Units.RATIO, Units.RATIO, null));
    lines.stream()
        .flatMap(each -> each.tested().problems().stream())
        .forEach(problem -> tab.caution(problem.toString()));
  }

  /** A function of one of the office's tables. */
  private record Own(String table, Tested tested) {}
}

package sheathwright.cli.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Shown;
import sheathwright.job.table.ProblemLines;
import sheathwright.proof.Difference;
import sheathwright.proof.OfficeCases;
import sheathwright.proof.ProgramPrint;
import sheathwright.proof.Tested;
import sheathwright.proof.Told;
import sheathwright.repl.show.Screen;
import sheathwright.workbook.audit.Recomputed;
import sheathwright.workbook.file.Program;
import sheathwright.workbook.proof.Control;
import sheathwright.workbook.proof.Verification;

/** What was verified, as lines of a terminal. */
final class VerifiedLines {

  private static final int WIDTH = Screen.PIPE.columns();
  private static final String INDENT = "           ";

  private VerifiedLines() {}

  /** All that was verified in one run. */
  static List<String> of(Verification all) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s, Java %s, %s %s"
            .formatted(
                Program.NAME,
                System.getProperty("java.version"),
                System.getProperty("os.name"),
                System.getProperty("os.arch")));
    for (ProgramPrint print : all.prints()) {
      lines.add("%-10s %s".formatted(print.what(), print.digits()));
      lines.add(INDENT + "SHA-256 of " + print.about());
    }
    lines.add("");
    lines.add(
        "%-12s %9s %10s %6s %9s".formatted("room", "functions", "with cases", "cases", "hold"));
    rooms(all.tested())
        .forEach(
            (room, tested) ->
                lines.add(
                    "%-12s %9d %10d %,6d %,9d"
                        .formatted(
                            room,
                            tested.size(),
                            tested.stream().filter(Tested::hasCases).count(),
                            tested.stream().mapToInt(each -> each.outcomes().size()).sum(),
                            tested.stream().mapToInt(Tested::holding).sum())));
    lines.add("");
    for (Recomputed book : all.books()) {
      lines.add(
          "%-17s %,7d formulas worked out anew, %s"
              .formatted(
                  book.name(),
                  book.formulas(),
                  book.differing().isEmpty()
                      ? "none differs"
                      : book.differing().size() + " differ"));
    }
    for (Control control : all.controls()) {
      lines.addAll(
          hung("planted    ", control.what() + ": " + (control.isFound() ? "found" : "NOT FOUND")));
    }
    for (OfficeCases own : all.own()) {
      lines.addAll(hung("your own   ", own.file() + ": " + counted(own)));
    }
    lines.addAll(wrong(all));
    lines.addAll(Shown.wrapped(last(all), WIDTH, "", ""));
    return lines;
  }

  /** What does not hold. */
  static List<String> wrong(Verification all) {
    List<String> lines = new ArrayList<>();
    lines.addAll(
        ProblemLines.of(all.tested().stream().flatMap(each -> each.problems().stream()).toList()));
    all.books()
        .forEach(book -> book.differing().forEach(each -> lines.add(book.name() + ", " + each)));
    lines.addAll(
        ProblemLines.of(all.own().stream().flatMap(each -> each.problems().stream()).toList()));
    return lines;
  }

  /** How one function was checked. */
  static List<String> of(Tested tested) {
    return Told.page(tested).stream()
        .flatMap(line -> Shown.wrapped(line, WIDTH, "", "  ").stream())
        .toList();
  }

  /** What came of a table of somebody's own cases. */
  static List<String> of(OfficeCases own) {
    List<String> lines = new ArrayList<>();
    for (Tested tested : own.tested()) {
      String told =
          "%s: %s, %s"
              .formatted(
                  tested.card().name(),
                  counted(tested.outcomes().size(), tested.failing()),
                  Told.nearness(tested));
      lines.addAll(Shown.wrapped(told, WIDTH, "", "  "));
    }
    return lines;
  }

  private static String counted(OfficeCases own) {
    return counted(own.cases(), own.tested().stream().mapToInt(Tested::failing).sum());
  }

  private static String counted(int cases, int failing) {
    return Shown.counted(cases, "case")
        + (failing == 0 ? ", all hold" : ", %d NOT HELD".formatted(failing));
  }

  private static Map<String, List<Tested>> rooms(List<Tested> tested) {
    Map<String, List<Tested>> rooms = new LinkedHashMap<>();
    tested.forEach(
        each -> rooms.computeIfAbsent(each.card().room(), none -> new ArrayList<>()).add(each));
    return rooms;
  }

  private static String last(Verification all) {
    String worst =
        all.worst()
            .map(
                each ->
                    "worst %s, of %s"
                        .formatted(
                            each.worst().map(Difference::shareInWords).orElse(""),
                            each.card().name()))
            .orElse("none of numbers");
    return "%s: %d of %d functions, %,d cases; %s"
        .formatted(
            all.holds() ? "all holds" : "NOT ALL HOLDS",
            all.functionsWithCases(),
            all.tested().size(),
            all.cases(),
            worst);
  }

  private static List<String> hung(String head, String text) {
    return Shown.wrapped(text, WIDTH, head, INDENT);
  }
}

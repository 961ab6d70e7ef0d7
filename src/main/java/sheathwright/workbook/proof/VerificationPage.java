package sheathwright.workbook.proof;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Reference;
import sheathwright.proof.CaseKind;
import sheathwright.proof.ChangedNumber;
import sheathwright.proof.Difference;
import sheathwright.proof.Disagreement;
import sheathwright.proof.Evidence;
import sheathwright.proof.HeldBy;
import sheathwright.proof.Standing;
import sheathwright.proof.Tested;
import sheathwright.proof.Told;
import sheathwright.workbook.file.Program;

/** All evidence as one Markdown document, the bad lines as well. */
public final class VerificationPage {

  /** More are told by the command with the function's name. */
  private static final int MOST_SOURCES = 3;

  private static final String DOCS = "docs/";

  private final List<String> lines = new ArrayList<>();
  private final List<Tested> tested;

  private VerificationPage(List<Tested> tested) {
    this.tested = tested;
  }

  /** The document. */
  public static String text() {
    VerificationPage page =
        new VerificationPage(Catalog.shipped().cards().stream().map(Tested::of).toList());
    page.head();
    page.claims();
    page.functions();
    page.disagreements();
    page.chapter("4. Planted errors and mutations", "planted", "mutation score by room");
    page.chapter("5. Cutting plans and layouts", "plans");
    page.chapter("6. Workbooks", "workbooks");
    page.chapter("7. Forecasts", "forecasts");
    page.chapter("8. Hard use", "hard use");
    page.changes();
    return String.join("\n", page.lines) + "\n";
  }

  private void add(String... more) {
    lines.addAll(List.of(more));
  }

  private void head() {
    add(
        "# What was checked, and how it came out",
        "",
        "This page is written by `./sheathwright verify --markdown` from the certified cases and from `evidence.csv`; a test fails"
            + " when it is out of date. It lists the bad lines as well. Check the program where you run it:",
        "",
        "- `./sheathwright verify` takes under a minute and needs no network: fingerprints (SHA-256) of the program, its published"
            + " tables and its cases; every certified case; three workbooks worked out anew; two wrong values that it must find."
            + " Exit status 0 if all holds, else 1. `--report record.xlsx` writes a record to sign.",
        "- `./sheathwright verify nail_withdrawal` tells how one function was checked.",
        "- `./sheathwright verify mine.csv` runs cases of your own engineer's, and keeps them in the folder `checked` beside firm.csv:"
            + " from then on `verify` runs them there with ours, and the record holds them. Columns: `function` (or the file is"
            + " called as the function is), the function's arguments and results as `fill` names them, `source` (who worked it out),"
            + " and `tolerance` (0.001 is a thousandth of what is expected) or `within` (in the result's unit); `case`, `class` and"
            + " `kind` as below, if you like. A column whose name is wanted twice stands twice: the case's own, or the argument, first.",
        "",
        "Four words are kept apart. *Verification*: does it compute the published method? *Cross-check*: does another program say the"
            + " same? *Validation*: do built roofs agree? None was made. *Regression*: is it the same as last time?");
  }

  private void claims() {
    add(
        "",
        "## 1. What is claimed",
        "",
        Program.NAME
            + " computes the methods that it cites, as closely as this page says. It does not claim that a method fits your roof: results are"
            + " planning help, spans, fastening and leveling are screening only, local code and a licensed engineer decide."
            + " [What it does not cover](limits.md).",
        "");
    evidence("systems");
  }

  private void functions() {
    long cases = tested.stream().mapToLong(each -> each.outcomes().size()).sum();
    add(
        "",
        "## 2. Functions",
        "",
        "A line each, the least checked of a room first: %,d cases of %d of %d functions. A tolerance is what its cases state: a share of what is expected where a second program computed it, half the last digit where print is the source."
            .formatted(cases, tested.stream().filter(Tested::hasCases).count(), tested.size()),
        "");
    for (Standing standing : Standing.values()) {
      long count = tested.stream().filter(each -> Standing.of(each) == standing).count();
      add("- %s: %d".formatted(standing.words(), count));
    }
    add("");
    for (CaseKind kind : CaseKind.values()) {
      int count = tested.stream().mapToInt(each -> each.kinds().getOrDefault(kind, 0)).sum();
      add("- *%s*, %s: %,d cases".formatted(kind.word(), kind.meaning(), count));
    }
    Reference.rooms()
        .forEach(
            (room, title) -> {
              List<Tested> here =
                  tested.stream()
                      .filter(each -> each.card().room().equals(room))
                      .sorted(
                          Comparator.<Tested, Standing>comparing(Standing::of)
                              .thenComparing(
                                  Comparator.comparingDouble(VerificationPage::share).reversed()))
                      .toList();
              add(
                  "",
                  "### " + title,
                  "",
                  "| function | cases | of which | where | largest difference | of its tolerance | mean | standing | source |",
                  "| --- | ---: | --- | --- | --- | --- | --- | --- | --- |");
              here.forEach(each -> add(row(each)));
            });
  }

  /** What the worst use of a tolerance is, as coarsely as it is told: digits differ by machine. */
  private static double share(Tested tested) {
    double share = tested.worst().map(Difference::share).orElse(0.0);
    return share < 0.01 ? 0 : share;
  }

  private static String row(Tested tested) {
    if (!tested.hasCases()) {
      return "| `%s` | 0 | | | | | | %s; %s | %s |"
          .formatted(
              tested.card().name(),
              Standing.UNCHECKED.words(),
              HeldBy.of(tested.card())
                  .map("held by tests, such as `%s`"::formatted)
                  .orElse("no test of its room calls it"),
              cell(sources(Stream.of(tested.card().text().source()), tested)));
    }
    Optional<Difference> worst = tested.worst();
    String size = worst.map(Difference::inWords).orElse("");
    return "| `%s` | %d | %s | %s | %s | %s | %s | %s | %s |"
        .formatted(
            tested.card().name(),
            tested.outcomes().size(),
            Told.kinds(tested.kinds()),
            Told.kinds(tested.classes()),
            size,
            worst.map(Difference::shareInWords).orElse("words alone"),
            size.isEmpty() ? "" : worst.map(each -> mean(tested, each)).orElse(""),
            Standing.of(tested).words(),
            cell(sources(tested.sources().stream(), tested)));
  }

  /** Whose numbers they are, and what tests found besides. */
  private static String sources(Stream<String> sources, Tested tested) {
    List<String> all = sources.toList();
    String more =
        all.size() > MOST_SOURCES
            ? "; and %d more sources".formatted(all.size() - MOST_SOURCES)
            : "";
    return Stream.concat(
            all.stream().limit(MOST_SOURCES),
            Evidence.of(tested.card()).stream().map(Evidence::words))
        .collect(joining("; ", "", more));
  }

  private static String mean(Tested tested, Difference worst) {
    double mean = tested.meanDifference(worst);
    return (mean < 0 ? "−" : "") + worst.sized(Math.abs(mean));
  }

  private void disagreements() {
    add("", "## 3. Known disagreements with print", "");
    for (Disagreement each : Disagreement.all()) {
      add(
          "- `%s`, %s: %s; %s; %s ([each cell](%s))"
              .formatted(
                  each.function(),
                  each.source(),
                  each.cells(),
                  each.side(),
                  each.why(),
                  beside(each.page())));
    }
    for (Tested each : tested) {
      each.problems().forEach(problem -> add("- `%s`: %s".formatted(each.card().name(), problem)));
    }
  }

  private void chapter(String title, String... about) {
    add("", "## " + title, "");
    List.of(about).forEach(this::evidence);
  }

  private void evidence(String about) {
    List<Evidence> found = Evidence.about(about);
    if (found.isEmpty()) {
      add("- %s: nothing stated yet".formatted(about));
    }
    for (Evidence each : found) {
      String page = each.page().isEmpty() ? "" : "; [more](%s)".formatted(beside(each.page()));
      add("- %s (`%s`%s)".formatted(each.what(), each.by(), page));
    }
  }

  private void changes() {
    add("", "## 9. Numbers that changed since the last release", "");
    List<ChangedNumber> changed = ChangedNumber.all();
    if (changed.isEmpty()) {
      add(
          "None. What every certified case's arguments give is frozen with each release, this one's the first; a number that changes"
              + " without an explanation here fails the build.");
      return;
    }
    add(
        "| release | function | frozen line | result | was | now | why |",
        "| --- | --- | ---: | --- | --- | --- | --- |");
    for (ChangedNumber each : changed) {
      add(
          "| %s | `%s` | %s | `%s` | %s | %s | %s |"
              .formatted(
                  each.version(),
                  each.function(),
                  each.line(),
                  each.column(),
                  each.was(),
                  each.now(),
                  cell(each.why())));
    }
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }

  /** A page as it is linked to from the one beside it. */
  private static String beside(String page) {
    return page.startsWith(DOCS) ? page.substring(DOCS.length()) : "../" + page;
  }
}

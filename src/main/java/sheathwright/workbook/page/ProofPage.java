package sheathwright.workbook.page;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.RafterScreening;
import sheathwright.framing.sister.SisterSizes;
import sheathwright.job.Estimate;
import sheathwright.job.Framing;
import sheathwright.job.path.LoadPath;
import sheathwright.proof.CheckedLines;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Page;
import sheathwright.workbook.book.Tab;

/**
 * The page for the inspector: each check as what is asked, what can be given, and what comes of it.
 */
final class ProofPage {

  private static final List<String> HEADINGS =
      List.of("Check", "Demand", "Capacity", "Unit", "Ratio", "OK", "Reference");
  private static final Choice<String> HOLDS = Choice.literal("holds");
  private static final int ASKED = 1;
  private static final int GIVEN = 2;
  private static final int UNIT = 3;
  private static final int USED = 4;
  private static final int VERDICT = 5;
  private static final int RULE = 6;

  private ProofPage() {}

  static Tab tab(Book book, String subtitle) {
    return Sections.titled(book.tab("Proof", 28, 12, 12, 8, 11, 14, 40), subtitle);
  }

  static void write(Tab tab, Estimate estimate) {
    Framing framing = estimate.framing();
    tab.heading("The rafters");
    if (framing.rafters().isEmpty()) {
      tab.paragraph(
          "The job does not say what the rafters are, so they were not checked. Trusses are their engineer's alone.");
    } else {
      tab.caution(Cautions.SCREENING);
    }
    if (!framing.checks().isEmpty()) {
      checks(tab, framing.checks(), framing.holding(), "STOP");
      tab.audience().keyToMarks().ifPresent(tab::note);
    }
    tab.verdict("Decision", framing.decision());
    tab.note(
        "Each finding, who decides about it and what may go on meanwhile: " + StopPage.TAB + ".");
    tab.entry("May the crew repair them", framing.mayRepair(), "");
    framing.rafters().ifPresent(screening -> answers(tab, screening));
    tab.caution(Cautions.SISTERS);
    framing.rafters().ifPresent(screening -> deckOff(tab, screening, framing));
    framing.sisters().ifPresent(sisters -> sisters(tab, sisters, framing));
    if (framing.rafters().isPresent()) {
      tab.heading("What the rafters' checks were made from");
      estimate.job().rafterFacts().forEach((label, value) -> tab.link(label, value, ""));
      framing.taken().forEach((label, value) -> tab.aside(label, value, ""));
      known(tab, framing);
      tab.note(
          "To try another species, grade or size, change it on the tab job: this page follows.");
    }
    loadPath(tab, estimate.loadPath());
    tab.heading("The deck in the wind, and over its supports");
    checks(tab, estimate.site().checks(), HOLDS, "falls short");
    SitePage.proof(tab, estimate);
    checked(tab, estimate);
    Sections.cautions(tab);
  }

  /** How the functions were checked that the estimate's numbers came out of. */
  private static void checked(Tab tab, Estimate estimate) {
    List<Traced> values = new ArrayList<>(List.of(estimate.quote().total()));
    Stream.of(estimate.framing().checks(), estimate.site().checks(), estimate.loadPath().checks())
        .flatMap(List::stream)
        .map(Check::ratio)
        .forEach(values::add);
    tab.heading("How these functions were checked");
    CheckedLines.inShort(values).forEach(tab::note);
  }

  private static void loadPath(Tab tab, LoadPath path) {
    tab.heading("Down to the walls");
    tab.note(
        "What is not looked at is neither sound nor unsound: nobody knows. What is said of it at the end of the"
            + " tab job is checked here.");
    checks(tab, path.checks(), HOLDS, "falls short");
  }

  /** How what the checks were made from is known, and what is taken where it is not. */
  private static void known(Tab tab, Framing framing) {
    if (!framing.unsaid().isEmpty()) {
      tab.caution(
          "Nobody says how these are known, so they count as unknown: "
              + String.join(", ", framing.unsaid())
              + ".");
    }
    tab.note(
        "Unknown is not sound: a species or grade that nobody knows counts as the least of the published groups and as no-3,"
            + " moisture as wet, a seat cut as deep as bearing and slope make it, ties as none;"
            + " where size, span, bearing or ties are unknown nobody may say. What is assumed stands as assumed until somebody looks.");
  }

  private static void answers(Tab tab, RafterScreening screening) {
    tab.entry("Governing check", screening.governs(), "");
    tab.entry(
        "Longest span that passes",
        screening.longest(),
        "on the horizontal projection, all checks, not capped");
    tab.entry("Rafter-tie tension, per pair", screening.thrust(), "without a ridge beam");
  }

  private static void deckOff(Tab tab, RafterScreening screening, Framing framing) {
    Page.startNew(tab);
    tab.heading("While the deck is off");
    tab.note(
        "Without its deck nothing holds a rafter's upper edge but battens and braces; it can roll over before it breaks.");
    checks(tab, screening.deckOffChecks(), framing.holding(), "BRACE");
    tab.entry(
        "Braces at most this far apart",
        screening.deckOffBrace(),
        "0 where none would be enough; nobody walks an open rafter that is not held");
    tab.entry(
        "The same, for who stands on planks",
        screening.deckOffPlankBrace(),
        "planks that reach over three rafters or more");
  }

  private static void sisters(Tab tab, SisterSizes sisters, Framing framing) {
    tab.heading("Full-length sisters that would do");
    framing.besideSisters().ifPresent(said -> tab.verdict("Beside it", said));
    tab.list(
        sisters.roll(),
        List.of("Size", "Old rafter", "Sister", "Sag", "Passes", "Stick", "Rank by price"),
        Sections.units(
            null, Units.RATIO, Units.RATIO, Units.RATIO, null, Units.USD_PER_PIECE, Units.RATIO));
    if (tab.audience().maySee(sisters.cheapest())) {
      tab.entry("Cheapest that passes", sisters.cheapest(), "");
    }
    tab.note(
        "Each number is the part used up of what is allowed, 1 at most. Graded stock only: a stick ripped from a wider one has no grade.");
  }

  private static void checks(
      Tab tab, List<Check> checks, Choice<String> holding, String otherwise) {
    int head = tab.line();
    for (int column = 0; column < HEADINGS.size(); column++) {
      boolean right = column == ASKED || column == GIVEN || column == USED;
      tab.text(
          head, column, HEADINGS.get(column), right ? Part.COLUMN_HEAD_RIGHT : Part.COLUMN_HEAD);
    }
    checks.forEach(check -> line(tab, check, holding, otherwise));
    tab.skip(1);
  }

  /** What was counted holds as it is; a ratio no better than what it was made from is known. */
  private static void line(Tab tab, Check check, Choice<String> holding, String otherwise) {
    int line = tab.line();
    String what = check.what().substring(0, 1).toUpperCase(Locale.ROOT) + check.what().substring(1);
    tab.text(line, 0, what, Part.LABEL);
    String rule = rule(tab, check);
    if (check.isLive()) {
      tab.step(line, ASKED, check.demand(), Part.RESULT);
      tab.step(line, GIVEN, check.capacity(), Part.RESULT);
      tab.text(line, UNIT, Tab.unitBeside(check.demand()), Part.UNIT);
      tab.value(line, USED, check.ratio(), Part.RESULT);
      tab.stop(line, VERDICT, check.verdict(check.ratio().isNamed() ? holding : HOLDS, otherwise));
    } else {
      tab.text(line, VERDICT, "not looked at", Part.VERDICT);
    }
    tab.text(line, RULE, rule, Part.NOTE);
    tab.row(line).height(Tab.LINE_HEIGHT * tab.linesOf(rule, RULE, RULE, Part.NOTE) + 4);
  }

  private static String rule(Tab tab, Check check) {
    if (!check.isLive()) {
      return check.outcome().words();
    }
    return Stream.concat(
            check.look().map(look -> "needs " + look.what()).stream(),
            Stream.of(said(tab, check.demand()), said(tab, check.capacity())))
        .filter(text -> !text.isEmpty())
        .distinct()
        .collect(joining("; "));
  }

  private static String said(Tab tab, Traced value) {
    boolean isPlain =
        value.source().equals(Source.ARITHMETIC) || value.source().equals(Source.GIVEN);
    return isPlain ? "" : tab.audience().cited(value.source());
  }
}

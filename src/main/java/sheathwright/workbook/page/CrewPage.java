package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Reading;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.framing.stop.StopFinding;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.Leveling;
import sheathwright.job.SurveyedPlane;
import sheathwright.leveling.plan.LevelPlan;
import sheathwright.life.back.CrewTabs;
import sheathwright.life.supply.Supply;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.DeckMap;

/**
 * One plane for the crew, on one page: what stops, the map of its sheets, what is cut out, marks of
 * sisters, strips, and nails. Nothing of what it costs stands on it.
 */
final class CrewPage {

  private static final int FIRST = 22;
  private static final int OTHERS = 6;
  private static final int LEAST_COLUMNS = 15;
  private static final int LINES_OF_A_REPORT = 2;

  private final Tab tab;
  private final Estimate estimate;
  private final Deck.Part part;
  private final Optional<Roll> marks;

  private CrewPage(
      Book book, Estimate estimate, Deck.Part part, int feet, int others, String subtitle) {
    this.estimate = estimate;
    this.part = part;
    this.marks = marks(estimate, part.plane().name(), feet).filter(roll -> !roll.rows().isEmpty());
    int columns = Math.max(LEAST_COLUMNS, marks.map(roll -> roll.columns().size()).orElse(0));
    int[] widths = new int[columns];
    Arrays.fill(widths, OTHERS);
    Arrays.fill(widths, 0, Math.min(columns, CrewTabs.COLUMNS.size()), others);
    widths[0] = FIRST;
    tab =
        Sections.titled(book.tab(book.nameOfATab("Crew " + part.plane().name()), widths), subtitle)
            .inFractions();
  }

  /** A page for each plane. */
  static List<CrewPage> of(Book book, Estimate estimate, String subtitle) {
    return of(book, estimate, OTHERS, subtitle);
  }

  /**
   * The same on as many pages as it takes.
   *
   * @param others how wide all columns but the first are
   */
  static List<CrewPage> of(Book book, Estimate estimate, int others, String subtitle) {
    Reading reading = new Reading();
    Optional<Leveling.AtMiddle> middle = estimate.rafterLeveling().flatMap(Leveling::atMiddle);
    int feet = middle.map(each -> CrewRolls.feet(reading, each)).orElse(0);
    middle.ifPresent(each -> book.draws(List.of(reading.solution("marks_on_sisters"))));
    List<CrewPage> pages = new ArrayList<>();
    for (Deck.Part part : estimate.deck().parts()) {
      pages.add(new CrewPage(book, estimate, part, feet, others, subtitle));
    }
    return pages;
  }

  /** The plane that it is of. */
  String plane() {
    return part.plane().name();
  }

  /** The tab that it stands on. */
  Tab tab() {
    return tab;
  }

  private static Optional<Roll> marks(Estimate estimate, String plane, int feet) {
    Optional<Leveling> leveling = estimate.rafterLeveling();
    return leveling
        .flatMap(Leveling::atMiddle)
        .map(middle -> CrewRolls.marks(plane, middle, feet))
        .or(() -> plan(estimate, plane).map(each -> CrewRolls.marks(plane, each)));
  }

  private static Optional<LevelPlan> plan(Estimate estimate, String plane) {
    return estimate
        .rafterLeveling()
        .flatMap(Leveling::survey)
        .flatMap(
            survey ->
                survey.planes().stream().filter(each -> each.name().equals(plane)).findFirst())
        .map(SurveyedPlane::plan);
  }

  /**
   * Writes the page.
   *
   * @param supply names the nails
   * @param isFirst of all planes: the safety lines stand on it
   */
  void write(Supply supply, boolean isFirst) {
    String plane = part.plane().name();
    tab.heading("Plane " + plane + ": what stops");
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    stops();
    DeckMap.draw(
        tab,
        "The old %s of plane %s"
            .formatted(part.map().board().isPresent() ? "boards" : "sheets", plane),
        part.map(),
        part.courses().supports(),
        part.marks(),
        part.patches().map(PatchPlan::list).orElse(List.of()));
    part.patches().ifPresent(this::patches);
    marks.ifPresent(this::sisters);
    plan(estimate, plane).ifPresent(this::strips);
    tab.heading("In this order");
    tab.paragraph(
        "What stops; level; replace; support; relieve; refasten; sweep the nails; photograph; dry in.");
    tab.heading("Nails");
    tab.shown("Deck nail", supply.deckNail(), "");
    SitePage.spacings(tab, estimate);
    tab.sentence(
        Choice.sentence(
                Choice.literal("Nails in a whole sheet: "),
                estimate.nailsInASheet(),
                Choice.literal(", near roof edges "),
                estimate.site().nailing().inASheetNearEdges(),
                Choice.literal("."))
            .as("nails_said_to_crew"));
    tab.sentence(
        Choice.sentence(
                Choice.literal("Nails to sweep: look for about "),
                estimate.nailsInASheet(),
                Choice.literal(
                    " from each old sheet that is taken up, as if it was nailed like a new one; common practice, no source."))
            .as("nails_to_sweep"));
    if (isFirst) {
      tab.heading("On the roof, for every plane");
      Cautions.toTheCrew().forEach(tab::paragraph);
    } else {
      tab.note("What to look out for on the roof stands on the first of these pages.");
    }
  }

  /**
   * A line for each report, so that a page that recalculates keeps its layout whatever is reported;
   * where it does not, what stops nobody is one line.
   */
  private void stops() {
    List<String> quiet = new ArrayList<>();
    for (List<Traced> row : estimate.framing().stops().toCrew().rows()) {
      if (!tab.audience().isOffice() && row.get(0).plain().equals(StopFinding.NOTHING.word())) {
        quiet.add(row.get(2).plain());
        continue;
      }
      tab.sentence(
          Choice.sentence(row.get(2), Choice.literal(": "), row.get(1)).as("said_to_crew"),
          LINES_OF_A_REPORT);
    }
    if (!quiet.isEmpty()) {
      tab.paragraph(
          "Looked at or reckoned, and nothing stops you: " + String.join("; ", quiet) + ".");
    }
  }

  private void patches(PatchPlan plan) {
    String plane = part.plane().name();
    if (plan.list().isEmpty()) {
      return;
    }
    tab.listUnder(
        "Cut out, gaps included",
        "Cut out, " + plane,
        CrewRolls.patches(plane, plan),
        List.of(
            "Patch",
            "From left, ft",
            "in",
            "From eave, ft",
            "in",
            "Width, ft",
            "in",
            "Height, ft",
            "in",
            "Marks"),
        numbers(8, true));
    tab.listUnder(
        "Cut for them, the strength axis along the width",
        "Cut, " + plane,
        CrewRolls.pieces(plane, plan),
        List.of("For patch", "Width, ft", "in", "Height, ft", "in", "Sheet"),
        numbers(5, false));
    tab.shown("Scabs under ends", plan.scabs(), "");
    tab.whole("Blocking or clips along new edges", plan.blocking().roundedUp(), "");
  }

  private void sisters(Roll roll) {
    tab.heading("Sisters");
    tab.linkedVerdict("Nothing of this before", estimate.framing().decision());
    boolean isReadAtMiddle = estimate.rafterLeveling().flatMap(Leveling::atMiddle).isPresent();
    List<String> headings =
        new ArrayList<>(
            List.of(
                "Rafter",
                "Do",
                isReadAtMiddle ? "From bearing, ft" : "From eave, ft",
                "in",
                "Long, ft",
                "in"));
    int feet = roll.columns().size() - headings.size() - 1;
    for (int foot = 0; foot < feet; foot++) {
      headings.add(foot + " ft");
    }
    headings.add("at its end");
    List<Unit<?>> units = new ArrayList<>(Sections.units(null, null));
    while (units.size() < headings.size()) {
      units.add(Units.INCH);
    }
    tab.listUnder(
        "How far the old top lies below the sister's, in inches at each foot",
        "Sisters, " + plane(),
        roll,
        headings,
        units);
    tab.note(
        "Feet run from the sister's lower end. "
            + (isReadAtMiddle
                ? "Only mid-length was read: these lie on a curve through that; hold each against the string."
                : "Marked to the nearest sixteenth."));
  }

  private void strips(LevelPlan plan) {
    if (plan.strips().isEmpty()) {
      return;
    }
    String plane = part.plane().name();
    tab.listUnder(
        "Strips on the rafters",
        "Strips on rafters, " + plane,
        CrewRolls.strips(plane, plan.strips()),
        List.of(
            "Rafter",
            "From eave, ft",
            "in",
            "To, ft",
            "in",
            "Long, ft",
            "in",
            "Most, in",
            "Sheet nail, in"),
        numbers(8, false));
    tab.listUnder(
        "How thick the strips are",
        "Thick, " + plane,
        CrewRolls.thicknesses(plane, plan.strips()),
        List.of("Rafter", "From eave, ft", "in", "Thick, in"),
        numbers(3, false));
  }

  /** A text, so many numbers, and perhaps a text. */
  private static List<Unit<?>> numbers(int many, boolean isTextLast) {
    List<Unit<?>> units = new ArrayList<>();
    units.add(null);
    for (int i = 0; i < many; i++) {
      units.add(Units.INCH);
    }
    if (isTextLast) {
      units.add(null);
    }
    return units;
  }
}

package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.DeckOffWay;
import sheathwright.framing.rafter.RafterScreening;
import sheathwright.job.Deck;
import sheathwright.job.DeckAreas;
import sheathwright.job.Estimate;
import sheathwright.job.life.Stage;
import sheathwright.life.found.FoundWork;
import sheathwright.life.found.MayCover;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.DeckMap;

/**
 * Parts of pages that show the deck: what it measures, what was found on it, what is cut out and
 * laid.
 */
final class DeckPages {

  private static final String DRAWN =
      "Drawn when this file was written; whether it still holds is said on the Self-check tab.";

  private DeckPages() {}

  /** The planes and openings as they were measured. */
  static void measured(Tab tab, Estimate estimate) {
    DeckAreas areas = estimate.areas();
    tab.heading("Roof planes, measured on the slope");
    areas.planes().ifPresent(roll -> planes(tab, roll, areas.hasLeans()));
    areas
        .shapes()
        .ifPresent(
            roll ->
                tab.list(
                    roll,
                    List.of("Plane", "Corners, ft along and up", "Area, sq ft"),
                    Sections.units(null, null, Units.SQUARE_FOOT)));
    areas
        .openings()
        .ifPresent(
            roll -> {
              tab.heading("Openings");
              tab.list(
                  roll,
                  List.of(
                      "Plane",
                      "From the left, ft",
                      "From the eave, ft",
                      "Width, ft",
                      "Height, ft",
                      "Area, sq ft"),
                  Sections.units(
                      null, Units.FOOT, Units.FOOT, Units.FOOT, Units.FOOT, Units.SQUARE_FOOT));
            });
    tab.total("Deck", estimate.deckArea(), "openings taken off");
    supports(tab, estimate);
    oldSheets(tab, estimate.deck());
    layers(tab, estimate);
  }

  private static void oldSheets(Tab tab, Deck deck) {
    deck.oldSheets()
        .ifPresent(
            roll -> {
              tab.heading("How the old sheets lie");
              tab.list(
                  roll,
                  List.of("Plane", "First end joint, in", "Shift of courses, in", "Course 1, in"),
                  Sections.units(null, Units.INCH, Units.INCH, Units.INCH));
            });
    deck.measuredJoints()
        .ifPresent(
            roll -> {
              tab.listUnder(
                  "End joints of the old sheets, measured",
                  "Joints measured",
                  roll,
                  List.of("Plane", "Course", "From the left, in"),
                  Sections.units(null, Units.RATIO, Units.INCH));
            });
  }

  private static void layers(Tab tab, Estimate estimate) {
    estimate
        .framing()
        .layers()
        .ifPresent(
            roll -> {
              tab.heading("What the roof weighs, layer by layer");
              tab.list(
                  roll,
                  List.of(
                      "Material",
                      "Layers",
                      "Thickness, in",
                      "What becomes of it",
                      "Load, psf of slope",
                      "Comes off, psf",
                      "Goes on, psf"),
                  Sections.units(
                      null, Units.RATIO, Units.INCH, null, Units.PSF, Units.PSF, Units.PSF));
            });
  }

  private static void planes(Tab tab, Roll roll, boolean hasLeans) {
    List<String> headings = new ArrayList<>(List.of("Plane", "Eave, ft", "Slope length, ft"));
    List<Unit<?>> units = new ArrayList<>(Sections.units(null, Units.FOOT, Units.FOOT));
    if (hasLeans) {
      headings.addAll(List.of("Left leans in, ft", "Right leans in, ft"));
      units.addAll(List.of(Units.FOOT, Units.FOOT));
    }
    headings.add("Area, sq ft");
    units.add(Units.SQUARE_FOOT);
    tab.list(roll, headings, units);
  }

  private static void supports(Tab tab, Estimate estimate) {
    estimate
        .deck()
        .measuredSupports()
        .ifPresent(
            roll -> {
              tab.listUnder(
                  "Rafters, measured along the eave",
                  "Rafters measured",
                  roll,
                  List.of("Plane", "Center, in"),
                  Sections.units(null, Units.INCH));
            });
  }

  /** Before a price is given: whether another covering may go over the one that lies there. */
  private static void mayCover(Tab tab, Estimate estimate) {
    if (!estimate.job().stage().value().isAtLeast(Stage.QUOTED)) {
      tab.heading("May another covering go over the old one?");
      tab.said("May we cover it", MayCover.answer(estimate.job()));
      tab.caution(MayCover.HIDDEN);
    }
  }

  /** What was found, plane by plane, drawn to scale, and what is done about it. */
  static void found(Tab tab, Estimate estimate, FoundWork work) {
    mayCover(tab, estimate);
    Deck deck = estimate.deck();
    deck.marks()
        .ifPresentOrElse(
            roll -> {
              marks(tab, roll);
            },
            () -> {
              tab.heading("What was found");
              tab.paragraph("Nothing is marked yet: the deck has not been seen from above.");
            });
    done(tab, work.inWords(estimate));
    reported(tab, estimate);
    for (Deck.Part part : deck.parts()) {
      DeckMap.draw(
          tab,
          "Plane " + part.plane().name(),
          part.map(),
          part.courses().supports(),
          part.marks(),
          part.patches().map(PatchPlan::list).orElse(List.of()));
    }
    tab.note(DRAWN);
  }

  private static void marks(Tab tab, Roll roll) {
    List<String> headings =
        new ArrayList<>(
            List.of(
                "Mark",
                "Plane",
                "Finding",
                "From the left, in",
                "From the eave, in",
                "Width, in",
                "Height, in"));
    List<Unit<?>> units =
        new ArrayList<>(
            Sections.units(null, null, null, Units.INCH, Units.INCH, Units.INCH, Units.INCH));
    if (roll.columns().size() > headings.size()) {
      headings.add("Place");
      units.add(null);
    }
    tab.listUnder("What was found", "All that was found", roll, headings, units);
  }

  private static void done(Tab tab, Map<String, Choice<String>> words) {
    if (!words.isEmpty()) {
      tab.heading("What is done about it");
      tab.note("The owner's papers call them No. 1, 2, … in this order.");
      words.forEach((mark, sentence) -> tab.said(mark, sentence));
    }
  }

  private static void reported(Tab tab, Estimate estimate) {
    estimate
        .framing()
        .reported()
        .ifPresent(
            roll -> {
              tab.listUnder(
                  "Reported of the framing",
                  "All that was reported",
                  roll,
                  List.of("Report", "Seen", "Where", "Evidence"),
                  Sections.units(null, null, null, null));
              tab.note(
                  "Who decides about each, and what may go on meanwhile: " + StopPage.TAB + ".");
            });
  }

  /** What is cut out and put in, plane by plane. */
  static void work(Tab tab, Estimate estimate) {
    tab.heading("Before you start");
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    estimate
        .framing()
        .rafters()
        .ifPresent(screening -> tab.aside("While the deck is off", deckOff(screening), ""));
    SitePage.work(tab, estimate);
    boolean hasPatches = false;
    for (Deck.Part part : estimate.deck().parts()) {
      if (part.patches().isPresent()) {
        hasPatches = true;
        PatchPlan patches = part.patches().get();
        String plane = part.plane().name();
        tab.listUnder(
            "Patches on plane " + plane,
            "Patches, " + plane,
            patches.work(),
            List.of(
                "Patch",
                "Repairs marks",
                "From the left, in",
                "From the eave, in",
                "Width, in",
                "Height, in"),
            Sections.units(null, null, Units.INCH, Units.INCH, Units.INCH, Units.INCH));
        tab.entry("Counted on a bill", counted(part, patches, estimate), "by its rule for a sheet");
        tab.entry("Sheets for them", patches.sheets(), "");
        tab.entry("At least", patches.atLeast(), "no cutting of these pieces takes fewer");
        tab.entry("Scabs under ends", patches.scabs(), "where no support carries a new end");
        tab.entry("Blocking or clips along new edges", patches.blocking(), "between supports");
      }
    }
    if (!hasPatches) {
      tab.heading("Patches");
      tab.paragraph("No patch is planned: nothing is marked yet.");
    }
  }

  private static Figure<Sheets> counted(Deck.Part part, PatchPlan patches, Estimate estimate) {
    return patches.units().by(estimate.billRule(), "billed_on_" + part.plane().name());
  }

  /** What a crew does, so that open rafters bear whoever works on them. */
  private static Choice<String> deckOff(RafterScreening screening) {
    Choice<String> words = Choice.literal(inWords(DeckOffWay.NOBODY_ON_IT));
    for (DeckOffWay way : DeckOffWay.values()) {
      if (way != DeckOffWay.NOBODY_ON_IT) {
        words =
            Choice.choose(screening.deckOffWay().is(way), Choice.literal(inWords(way)), words)
                .as("deck_off_in_words_" + (way.ordinal() + 1));
      }
    }
    return words.as("deck_off_in_words");
  }

  private static String inWords(DeckOffWay way) {
    return switch (way) {
      case AS_IT_STANDS -> "held as they are, the rafters bear one person";
      case FEW_SHEETS_OR_BRACES ->
          "open a few sheets at a time, or brace the rafters' upper edges as close as Proof says";
      case BRACES -> "brace the rafters' upper edges as close as Proof says";
      case PLANKS_AND_BRACES ->
          "stand on planks over three rafters or more, braced as close as Proof says";
      case NOBODY_ON_IT -> "no brace is close enough: nobody walks or loads an open rafter";
    };
  }

  /** How the pieces are cut, for the saw. */
  static void cutting(Tab tab, Estimate estimate) {
    for (Deck.Part part : estimate.deck().parts()) {
      part.patches()
          .ifPresent(
              patches -> {
                tab.heading("Cutting the patches of plane " + part.plane().name());
                tab.note(
                    "From the sheet's lower left corner; the strength axis runs along x, never turned.");
                tab.list(
                    patches.cutting(),
                    List.of(
                        "For patch", "Sheet", "x, in", "y, in", "Cut width, in", "Cut height, in"),
                    Sections.units(
                        null, Units.RATIO, Units.INCH, Units.INCH, Units.INCH, Units.INCH));
              });
    }
  }

  /** New sheets on the whole deck, from the layout. */
  static void layout(Tab tab, Estimate estimate) {
    DeckLayout layout = estimate.deck().layout();
    tab.heading("Full re-deck");
    tab.entry("Sheets, by the layout", layout.sheets(), "what is cut off is used again");
    tab.entry("At least", layout.atLeast(), "for this layout");
    tab.entry("Laid uncut", layout.whole(), "");
    tab.entry(
        "Nails, sheet by sheet",
        estimate.deck().nails(),
        "a row for each sheet that shares a rafter");
    tab.entry("Saw cuts", layout.cuts(), "");
    tab.entry(
        "Joints that miss their support",
        layout.jointsOff(),
        "trim, scab or block them: see the map");
    tab.entry(
        "Long edges between courses",
        layout.edge(),
        "clips, blocking or tongue and groove, where the span table asks");
    tab.entry(
        "Clips, one in each bay", layout.bays(), "where clips are used; two in bays of 48 in");
    tab.entry(
        "Pieces over fewer than two spans",
        layout.shortPieces(),
        "move the first joint, or support all their edges");
    tab.measured("Height of the last course", layout.lastCourse(), "");
    tab.entry("Narrow strip?", layout.narrow(), "under 24 in the span table does not hold");
    for (Deck.Part part : estimate.deck().parts()) {
      DeckMap.draw(
          tab,
          "Plane " + part.plane().name() + " as it would be laid anew",
          part.courses(),
          List.of(),
          List.of());
    }
    tab.note(DRAWN);
  }
}

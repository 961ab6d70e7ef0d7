package sheathwright.workbook.page;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.site.Covering;
import sheathwright.job.site.DeckNailing;
import sheathwright.job.site.RoofArea;
import sheathwright.job.site.Site;
import sheathwright.job.site.Spacings;
import sheathwright.job.table.Field;
import sheathwright.workbook.book.Tab;

/** Parts of pages that tell what follows from a job's site and code. */
final class SitePage {

  private SitePage() {}

  /** What is known of the site, what follows from that, and what the job leaves out. */
  static void known(Tab tab, Estimate estimate, Map<String, Traced> told) {
    Site site = estimate.site();
    tab.heading("The site and its code");
    told.forEach((label, value) -> tab.aside(label, value, value.source().text()));
    shown(tab, "Edition of ASCE 7", site.wind().edition(), "follows from the code");
    shown(tab, "Mean roof height", site.wind().height(), "between eave and ridge");
    for (RoofArea area : RoofArea.values()) {
      shown(tab, "Uplift, " + where(area), site.wind().uplift(area), "allowable level");
    }
    List<Field<?>> leftOut = site.leftOut();
    if (!leftOut.isEmpty()) {
      tab.paragraph(
          "The job does not say: %s. Whatever follows from these was not looked at."
              .formatted(leftOut.stream().map(Field::name).collect(joining(", "))));
    }
  }

  /** A value, if there is one. */
  private static void shown(Tab tab, String label, Traced value, String note) {
    if (value.refusal().isEmpty()) {
      tab.shown(label, value, note);
    }
  }

  /** How the new sheets are nailed, in the words of the crew. */
  static void work(Tab tab, Estimate estimate) {
    DeckNailing nailing = estimate.site().nailing();
    tab.heading("Nailing the new sheets");
    spacings(tab, estimate);
    tab.shown("Nails in each sheet", nailing.inASheet(), "");
    tab.shown("The same near roof edges", nailing.inASheetNearEdges(), "");
    nailing
        .notByCode()
        .ifPresent(
            why ->
                tab.caution(
                    "Nobody held this spacing against a code: %s. Ask the building department."
                        .formatted(why)));
    decided(tab, nailing);
    clips(tab, estimate.site().covering());
  }

  /** How far apart nails stand, zone by zone. */
  static void spacings(Tab tab, Estimate estimate) {
    Site site = estimate.site();
    DeckNailing nailing = site.nailing();
    Spacings used = nailing.used();
    tab.measured("Panel edges, a nail every", used.edge(), "on every rafter under an edge");
    tab.measured("Between, a nail every", used.field(), "on the rafters between");
    if (nailing.byCode().isPresent()) {
      tab.measured(
          "Near roof edges, this far in", site.nearEdges(), "from eave, rake, ridge and hip");
      tab.measured("There, panel edges every", used.nearEdge(), "");
      tab.measured("There, between, every", used.nearField(), "");
      tab.measured("Gable-end framing, every", used.gable(), "");
    }
  }

  private static void clips(Tab tab, Covering covering) {
    if (covering.isKnown()) {
      tab.heading("Clips of the covering");
      for (RoofArea area : RoofArea.values()) {
        if (covering.used(area).refusal().isEmpty()) {
          tab.measured("Clips, " + where(area), covering.used(area), "clip to clip, at most");
        }
        shown(tab, "What decides that", covering.clips(area).governs(), "");
      }
    }
  }

  private static void decided(Tab tab, DeckNailing nailing) {
    nailing
        .decision()
        .ifPresent(
            decision -> {
              tab.shown("Decided by", decision.by(), "");
              tab.shown("Because", decision.why(), "");
            });
  }

  private static String where(RoofArea area) {
    return switch (area) {
      case FIELD -> "the field of the roof";
      case EDGES -> "along its edges";
      case CORNERS -> "at its corners";
    };
  }

  /** What was typed beside what the code asks for, where the office reads first. */
  static void front(Tab tab, Estimate estimate) {
    DeckNailing nailing = estimate.site().nailing();
    nailing
        .beside()
        .ifPresent(
            beside -> {
              String otherwise =
                  nailing.decision().isPresent()
                      ? "wider than the code prints, as it was decided"
                      : "LOOK: wider than the code prints";
              tab.verdict(
                  "Nail spacing as typed",
                  Choice.choose(
                          beside.asClose(),
                          Choice.literal("as close as the code prints"),
                          Choice.literal(otherwise))
                      .as("nail_spacing_verdict"));
              tab.repeat("Nails in a sheet, as typed", beside.typed(), "");
              tab.repeat("Nails in a sheet, by the code", beside.byCode(), "");
            });
    decided(tab, nailing);
    nailing
        .notByCode()
        .ifPresent(
            why -> tab.caution("The nail spacing was not held against a code: " + why + "."));
  }

  /** What an inspector asks for, and what the nails and clips hold. */
  static void proof(Tab tab, Estimate estimate) {
    Site site = estimate.site();
    tab.heading("What an inspector looks for");
    for (Site.Inspected item : site.inspected()) {
      boolean isMeasured =
          item.value() instanceof Figure<?> figure && figure.unit().equals(Units.INCH);
      if (isMeasured) {
        tab.measured(item.what(), item.value(), item.rule());
      } else {
        tab.shown(item.what(), item.value(), item.rule());
      }
    }
    tab.shown("Nails in each sheet", site.nailing().inASheet(), "");
  }
}

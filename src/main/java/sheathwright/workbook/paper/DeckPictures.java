package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Reading;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.life.bill.Share;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.Patch;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.workbook.book.Page;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.DeckMap;

/** Pages that show: each plane that has one of some marks as a map, and the marks' photographs. */
final class DeckPictures {

  private final Tab tab;
  private final Estimate estimate;
  private final Photos photos;

  DeckPictures(Tab tab, Estimate estimate, Photos photos) {
    this.tab = tab;
    this.estimate = estimate;
    this.photos = photos;
  }

  /** The maps of these marks. */
  void maps(Set<String> marks) {
    for (Deck.Part part : estimate.deck().parts()) {
      List<Mark> shown =
          part.marks().stream()
              .filter(mark -> marks.contains(mark.seen(Reading.aside()).key()))
              .toList();
      if (!shown.isEmpty()) {
        draw("Plane " + part.plane().name(), part, shown, List.of());
      }
    }
  }

  /** The maps of the new wood that was put in for these marks. */
  void asBuilt(Set<String> marks) {
    for (Deck.Part part : estimate.deck().parts()) {
      List<Patch> laid =
          part.patches().map(PatchPlan::list).orElse(List.of()).stream()
              .filter(patch -> patch.marks().stream().anyMatch(marks::contains))
              .toList();
      if (!laid.isEmpty()) {
        draw("Plane " + part.plane().name() + ": what is new", part, List.of(), laid);
      }
    }
  }

  private void draw(String heading, Deck.Part part, List<Mark> marks, List<Patch> patches) {
    DeckMap.draw(tab, heading, part.map(), part.courses().supports(), marks, patches);
  }

  /** The photographs of these marks, on pages of their own. */
  void photographs(List<Share> shares) {
    Page.startNew(tab);
    List<Share> without = new ArrayList<>();
    for (Share share : shares) {
      List<Photo> all = photos.of(share);
      if (all.isEmpty()) {
        without.add(share);
      } else {
        PhotoRows.write(tab, heading(share), all);
      }
    }
    if (!without.isEmpty()) {
      tab.heading("Without a photograph");
      without.forEach(share -> tab.paragraph(heading(share)));
    }
  }

  /** Photographs of no mark: stamps, nails, wide views. */
  void of(List<Photo> all) {
    if (!all.isEmpty()) {
      PhotoRows.write(tab, "Of the deck", all);
    }
  }

  private static String heading(Share share) {
    return "Mark %s, %s".formatted(share.mark(), share.key());
  }
}

package sheathwright.workbook.paper;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import sheathwright.figure.Reading;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.life.bill.Share;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.Patch;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.workbook.draw.DeckMap;
import sheathwright.workbook.told.Photo;
import sheathwright.workbook.told.PhotoRows;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Sheaf;

/** Pages that show: each plane that has one of some marks as a map, and the marks' photographs. */
final class DeckPictures {

  private static final int[] WIDTHS = {36, 18, 18, 18, 18};

  private final Paper paper;
  private final Estimate estimate;
  private final Photos photos;
  private final Places places;

  DeckPictures(Paper paper, Estimate estimate, Photos photos) {
    this.paper = paper;
    this.estimate = estimate;
    this.photos = photos;
    places = Places.of(estimate);
  }

  /**
   * The maps of these marks by their numbers, and their sheets of paper; a plane without one takes
   * no page.
   */
  Sheaf maps(List<Share> shares) {
    Set<String> marks = marks(shares);
    Sheaf sheaf = paper.sheaf("Maps", WIDTHS);
    for (Deck.Part part : estimate.deck().parts()) {
      List<Mark> shown =
          part.marks().stream()
              .filter(mark -> marks.contains(mark.seen(Reading.aside()).key()))
              .toList();
      if (!shown.isEmpty()) {
        numbered(sheaf, "", part, shown, List.of());
      }
    }
    return sheaf;
  }

  /** A map of each plane with everything that is marked on it. */
  void everyPlane() {
    Sheaf sheaf = paper.sheaf("Planes", WIDTHS);
    for (Deck.Part part : estimate.deck().parts()) {
      sheaf.keep(DeckMap.TALLEST);
      DeckMap.draw(
          sheaf.tab(),
          "Plane " + part.plane().name(),
          part.map(),
          part.courses().supports(),
          part.marks(),
          List.of());
    }
  }

  /** The maps of the new wood that was put in for these marks. */
  void asBuilt(List<Share> shares) {
    Set<String> marks = marks(shares);
    Sheaf sheaf = paper.sheaf("What is new", WIDTHS);
    for (Deck.Part part : estimate.deck().parts()) {
      List<Patch> laid =
          part.patches().map(PatchPlan::list).orElse(List.of()).stream()
              .filter(patch -> patch.marks().stream().anyMatch(marks::contains))
              .toList();
      if (!laid.isEmpty()) {
        numbered(sheaf, ": what is new", part, List.of(), laid);
      }
    }
  }

  private static Set<String> marks(List<Share> shares) {
    return shares.stream().map(Share::mark).collect(Collectors.toSet());
  }

  private void numbered(
      Sheaf sheaf, String what, Deck.Part part, List<Mark> marks, List<Patch> patches) {
    sheaf.keep(DeckMap.TALLEST);
    DeckMap.numbered(
        sheaf.tab(),
        Places.headed(places.side(part.plane())) + what,
        part.map(),
        part.courses().supports(),
        marks,
        patches,
        places::number);
  }

  /**
   * The photographs of these marks, each once, and others, on sheets of paper of their own.
   *
   * @param others of no mark: stamps, nails, wide views
   */
  Sheaf photographs(List<Share> shares, List<Photo> others) {
    Sheaf sheaf = paper.sheaf("Photographs", WIDTHS);
    Map<Photo, PhotoRows.Shown> all = new LinkedHashMap<>();
    for (Share share : shares) {
      for (Photo photo : photos.of(share.mark(), share.key())) {
        String of = places.told(share.mark(), share.key());
        all.putIfAbsent(photo, new PhotoRows.Shown(photo, of));
      }
    }
    PhotoRows.write(sheaf, "Of the marks", List.copyOf(all.values()));
    PhotoRows.write(
        sheaf,
        "Of the deck",
        others.stream().map(photo -> new PhotoRows.Shown(photo, "")).toList());
    return sheaf;
  }
}

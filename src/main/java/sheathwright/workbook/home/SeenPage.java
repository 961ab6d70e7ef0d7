package sheathwright.workbook.home;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import sheathwright.figure.Choice;
import sheathwright.figure.Reading;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.life.View;
import sheathwright.job.site.SiteFields;
import sheathwright.life.found.DoneInWords;
import sheathwright.life.found.Found;
import sheathwright.life.found.FoundWork;
import sheathwright.roof.OnTheGround;
import sheathwright.roof.Plane;
import sheathwright.roof.Spot;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.draw.RoofPlan;
import sheathwright.workbook.told.PhotoRows;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Sheaf;
import sheathwright.workbook.told.Waiting;

/** The page of what was found, where, and what we do about it. */
final class SeenPage {

  private static final List<String> HEADINGS =
      List.of("Where", "No.", "What we found", "What we do");

  /** A roof's rise is told for so many inches of run. */
  private static final double RUN = 12;

  /** What is marked is shown as it lay and opened. */
  private static final Set<View> SHOWN = EnumSet.of(View.BEFORE, View.OPEN);

  private final Sheaf sheaf;
  private final Estimate estimate;
  private final Photos photos;
  private final Places places;
  private final Map<String, Found> found = new HashMap<>();

  SeenPage(Sheaf sheaf, Estimate estimate, Photos photos) {
    this.sheaf = sheaf;
    this.estimate = estimate;
    this.photos = photos;
    places = Places.of(estimate);
    FoundWork.of(estimate).list().forEach(each -> found.put(each.mark(), each));
  }

  void write() {
    sheaf.tab().heading("Your roof");
    RoofPlan.draw(sheaf.tab(), planes());
    marks();
    framing();
  }

  private List<RoofPlan.Drawn> planes() {
    List<RoofPlan.Drawn> planes = new ArrayList<>();
    for (Deck.Part part : estimate.deck().parts()) {
      planes.add(
          new RoofPlan.Drawn(
              places.inPicture(part.plane()),
              part.plane(),
              places.marks().stream()
                  .filter(mark -> mark.marked().part() == part)
                  .map(mark -> new RoofPlan.Numbered(mark.number(), seen(mark).box()))
                  .toList(),
              fromAbove(part.plane())));
    }
    return planes;
  }

  /** How a bird sees the plane, once its eave, its facing and its slope are told. */
  private Optional<UnaryOperator<Spot>> fromAbove(Plane plane) {
    OnTheGround ground = estimate.job().onTheGround(plane.name());
    if (!ground.isKnown() || !estimate.job().knows(SiteFields.RISE)) {
      return Optional.empty();
    }
    double rise = estimate.job().fact(SiteFields.RISE).value() / RUN;
    double run = 1 / Math.hypot(1, rise);
    return Optional.of(spot -> ground.fromAbove(spot, run));
  }

  private void marks() {
    List<Places.Numbered> lines = places.marks();
    if (lines.isEmpty()) {
      sheaf.heading("What is marked");
      Letter.on(sheaf.tab())
          .sentence(
              "Nothing is marked yet: nobody can see your deck before the old roof covering is off.");
      return;
    }
    sheaf.list(
        "What is marked",
        lines,
        (some, part) -> roll(Sheaf.named("marked", part), some),
        HEADINGS,
        Arrays.asList(null, null, null, null));
    PhotoRows.write(sheaf, "Photographs of what is marked", photographs(lines));
  }

  private Roll roll(String name, List<Places.Numbered> lines) {
    return Roll.of(
        name,
        "what is marked",
        lines,
        words("where", places::where),
        words("number", line -> String.valueOf(line.number())),
        words("found", line -> found(seen(line).finding())),
        words("done", line -> done(line.marked())));
  }

  private static Roll.Column<Places.Numbered> words(
      String name, Function<Places.Numbered, String> words) {
    return Roll.column(name, line -> (Traced) Choice.literal(words.apply(line)));
  }

  private static Mark.Seen seen(Places.Numbered line) {
    return line.marked().mark().seen(Reading.aside());
  }

  /** As each mark lay and opened, in the order of the list. */
  private List<PhotoRows.Shown> photographs(List<Places.Numbered> lines) {
    List<PhotoRows.Shown> all = new ArrayList<>();
    for (Places.Numbered line : lines) {
      String key = seen(line).key();
      photos.of(key, found.get(key).key()).stream()
          .filter(photo -> SHOWN.contains(photo.view()))
          .forEach(photo -> all.add(new PhotoRows.Shown(photo, "No. " + line.number())));
    }
    return all;
  }

  private static String found(Finding finding) {
    return switch (finding) {
      case ROT -> "rotten wood";
      case DELAMINATED -> "layers of the sheet come apart";
      case SOFT -> "soft underfoot";
      case SWOLLEN -> "swollen from wet";
      case HOLE -> "a hole";
      case BROKEN -> "broken or burned through";
      case LOOSE -> "loose on its nails";
      case TIGHT -> "edges press and stand up";
      case UNSUPPORTED -> "an edge that nothing carries";
      case STAIN -> "stained or moldy, the wood sound";
      case THIN -> "thinner than it should be";
      case GAP_WIDE -> "too wide a gap";
      case PULLED -> "screws do not hold";
    };
  }

  /** What is done, and what else has to be, or it comes back. */
  private String done(Deck.Marked marked) {
    return DoneInWords.done(marked, found.get(marked.mark().key()));
  }

  /** What was seen of the framing that stops the work, in a homeowner's words. */
  private void framing() {
    boolean isHeaded = false;
    for (String words : Waiting.sentences(estimate)) {
      if (!isHeaded) {
        sheaf.heading("What has to be decided first", sheaf.tab().tallOf(words));
        isHeaded = true;
      }
      sheaf.keep(sheaf.tab().tallOf(words) + 3);
      Letter.on(sheaf.tab()).sentence(words);
    }
  }
}

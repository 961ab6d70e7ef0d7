package sheathwright.workbook.home;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sheathwright.figure.Reading;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.framing.stop.StopFinding;
import sheathwright.framing.stop.StopReports;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.OnTheGround;
import sheathwright.job.site.SiteFields;
import sheathwright.life.found.DoneInWords;
import sheathwright.life.found.Found;
import sheathwright.life.found.FoundWork;
import sheathwright.roof.Plane;
import sheathwright.roof.Spot;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.RoofPlan;

/** The page of what was found, where, and what we do about it. */
final class SeenPage {

  private static final List<String> HEADINGS =
      List.of("Where", "No.", "What we found", "Sheet", "What we do");

  /** A roof's rise is told for so many inches of run. */
  private static final double RUN = 12;

  private final Letter letter;
  private final Tab tab;
  private final Estimate estimate;
  private final Map<String, Found> found = new HashMap<>();

  SeenPage(Letter letter, Estimate estimate) {
    this.letter = letter;
    this.tab = letter.tab();
    this.estimate = estimate;
    FoundWork.of(estimate).list().forEach(each -> found.put(each.mark(), each));
  }

  void write() {
    tab.heading("Your roof");
    RoofPlan.draw(tab, planes());
    tab.heading("What is marked");
    marks();
    framing();
  }

  private List<RoofPlan.Drawn> planes() {
    List<RoofPlan.Drawn> planes = new ArrayList<>();
    int number = 0;
    for (Deck.Part part : estimate.deck().parts()) {
      List<RoofPlan.Numbered> numbered = new ArrayList<>();
      for (Mark mark : part.marks()) {
        number++;
        numbered.add(new RoofPlan.Numbered(number, mark.seen(Reading.aside()).box()));
      }
      planes.add(
          new RoofPlan.Drawn(
              WhereWords.inPicture(estimate, part.plane()),
              part.plane(),
              numbered,
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
    boolean isAny = estimate.deck().parts().stream().anyMatch(part -> !part.marks().isEmpty());
    if (!isAny) {
      letter.sentence(
          "Nothing is marked yet: nobody can see your deck before the old roof covering is off.");
      return;
    }
    int head = tab.line();
    for (int column = 0; column < HEADINGS.size(); column++) {
      tab.text(head, column, HEADINGS.get(column), Part.COLUMN_HEAD);
    }
    int number = 0;
    for (Deck.Marked marked : byPlane()) {
      number++;
      line(number, marked);
    }
  }

  /** The marks in the order in which the picture numbers them. */
  private List<Deck.Marked> byPlane() {
    return estimate.deck().parts().stream()
        .flatMap(part -> estimate.deck().marked().stream().filter(each -> each.part() == part))
        .toList();
  }

  private void line(int number, Deck.Marked marked) {
    Mark.Seen mark = marked.mark().seen(Reading.aside());
    int line = tab.line();
    List<String> words =
        List.of(
            WhereWords.of(estimate, marked.part().plane(), mark.box()),
            String.valueOf(number),
            found(mark.finding()),
            found.get(mark.key()).key(),
            done(marked));
    for (int column = 0; column < words.size(); column++) {
      tab.text(line, column, words.get(column), Part.LISTED_TEXT);
    }
    tab.raiseTo(line, words);
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
    StopReports stops = estimate.framing().stops();
    Roll said = stops.toHomeowner();
    boolean isHeaded = false;
    for (List<Traced> row : said.rows()) {
      if (row.get(0).plain().equals(StopFinding.NOTHING.word())) {
        continue;
      }
      if (!isHeaded) {
        tab.heading("What has to be decided first");
        isHeaded = true;
      }
      letter.sentence("%s (%s)".formatted(row.get(1).plain(), row.get(2).plain()));
    }
  }
}

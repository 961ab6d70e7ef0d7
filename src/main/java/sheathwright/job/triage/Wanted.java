package sheathwright.job.triage;

import java.util.List;
import java.util.Locale;
import sheathwright.fastening.uplift.MakerRequirement;
import sheathwright.fastening.uplift.MakerRequirement.Sense;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.site.Site;

/**
 * What a job asks of every sheet of its deck; a number that nobody can say is refused, and then no
 * sheet is held against it.
 *
 * @param nails by the schedule
 * @param thickness by the covering's maker or else the span table
 * @param hold of one screw of the covering's clips, by the maker or else the wind
 * @param edgesHeld whether the span table wants long edges held
 */
public record Wanted(
    Figure<Per<Nails, Sheets>> nails,
    Figure<Length> thickness,
    Figure<Force> hold,
    Choice<YesNo> edgesHeld) {

  /** What a site and the covering's maker ask for. */
  public static Wanted of(Site site, List<MakerRequirement> maker) {
    return new Wanted(
        site.nailing().inASheet(),
        asked(maker, "thick", Units.INCH, site.leastPanel()),
        asked(maker, "screw", Units.POUND, site.covering().onAScrew()),
        site.edgesHeld());
  }

  /**
   * The most that a maker asks for in such words, or else what follows without a maker; what the
   * maker allows at most asks for nothing.
   */
  private static <Q extends Quantity> Figure<Q> asked(
      List<MakerRequirement> maker, String word, Unit<Q> unit, Figure<Q> otherwise) {
    Figure<Q> nothing = Figure.of(0, unit);
    return maker.stream()
        .filter(each -> each.required().unit().equals(unit))
        .filter(each -> speaksOf(each.what().plain(), word))
        .map(
            each ->
                Figure.choose(each.sense().is(Sense.AT_LEAST), each.required().in(unit), nothing))
        .reduce(Figure::max)
        .map(most -> most(most, most.isMoreThan(nothing), otherwise))
        .orElse(otherwise);
  }

  private static <Q extends Quantity> Figure<Q> most(
      Figure<Q> most, Condition isAsked, Figure<Q> otherwise) {
    return otherwise.refusal().isPresent()
        ? most.onlyIf(isAsked, "the covering's maker asks for no least of it")
        : Figure.choose(isAsked, most, otherwise);
  }

  /** Thin and thick are both said of a thickness. */
  private static boolean speaksOf(String what, String word) {
    return what.toLowerCase(Locale.ROOT).replace("thin", "thick").contains(word);
  }
}

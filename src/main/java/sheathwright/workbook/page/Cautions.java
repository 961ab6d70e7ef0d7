package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Source;
import sheathwright.workbook.book.Audience;

/** What is said beside every result, because the work can hurt someone. */
final class Cautions {

  /** Beside anything structural. */
  static final String SCREENING = "Screening only: local code and a licensed engineer decide.";

  /** Beside anything that straightens a rafter. */
  static final String SISTERS =
      "Where this says STOP, nothing is done to the rafters before whoever it names has written what. Sisters and shims"
          + " set to a string line flatten a deck; by themselves they do not make a rafter strong enough.";

  /**
   * One thing that can hurt someone on or below a roof.
   *
   * @param crew as it is said to whoever works there
   * @param homeowner as it is said to whoever lives there
   * @param source the rule or practice, with how it was had
   */
  private record Caution(String crew, String homeowner, Source source) {

    private Caution(String crew, String homeowner) {
      this(crew, homeowner, Source.COMMON_PRACTICE);
    }

    private String said(Audience audience) {
      return audience.isOffice() ? "%s (%s)".formatted(crew, source) : homeowner;
    }
  }

  private static final List<Caution> ON_THE_ROOF =
      List.of(
          new Caution(
              "Falls: work 6 ft or more above a lower level needs guardrails, nets or personal fall arrest.",
              "Falls: keep people, pets and cars away from below the roof's edge while we work.",
              Source.fromMemory("29 CFR 1926.501")),
          new Caution(
              "Ladder and edge: one foot out for four up, tied, 3 ft above the eave; every hole in the deck is covered and marked.",
              "Ladders and covered holes: nobody else goes up, also when no one of us is there.",
              Source.fromMemory("29 CFR 1926.1053 and 1926.502")),
          new Caution(
              "Weak deck: nobody steps on a deck until it has been found strong enough; a loose sheet over a soft spot protects nobody.",
              "Weak deck: the old deck may not bear a person, from above or from the attic."),
          new Caution(
              "Loads: spread stacks over several rafters near their bearings; on an old roof take 20 psf as the ceiling.",
              "Loads: we spread what we stack; please store nothing in the attic meanwhile."),
          new Caution(
              "Before a rafter is cut, both sides of it are held up. Trusses are never cut or sistered without the truss designer's drawing.",
              "Rafters: none is cut before both sides of it are held up; a truss is never cut without its designer's drawing.",
              Source.fromMemory("IRC R802.10.4 for trusses")),
          new Caution(
              "Sheets are what braces the roof against wind and racking: open a few at a time, brace the rafters across, nail down before you go on.",
              "While sheets are off your roof is weaker against wind: we open a part of it at a time."),
          new Caution(
              "Open no more roof in a day than can be closed before rain.",
              "Rain: we open no more in a day than we can close again; cover what must not get wet in the attic."),
          new Caution(
              "Live wires: look from the attic for cables against the deck, set the saw no deeper than the deck, keep ladders and metal away from overhead lines.",
              "Wires: tell us of cables in the attic, solar wiring and antennas; some circuits may have to be off while we cut and nail.",
              Source.fromMemory("29 CFR 1926.416")),
          new Caution(
              "Vermiculite, loose and pebbly in an attic, is taken to hold asbestos: do not stir it, do not let debris fall into it.",
              "Loose, pebbly insulation in the attic may hold asbestos: keep out and do not sweep it.",
              Source.fromMemory(
                  "guidance of the Environmental Protection Agency on vermiculite insulation")),
          new Caution(
              "Asbestos: old felt, shingles, siding and flue pipes are sampled before they are broken.",
              "Old felt, siding and flue pipes may hold asbestos: they are sampled before they are broken.",
              Source.fromMemory("40 CFR 61.145 and 29 CFR 1926.1101")),
          new Caution(
              "Lead: paint on houses from before 1978 is taken to hold it; trim and soffits are cut by its rules.",
              "Paint on a house from before 1978 may hold lead: keep windows shut and children away from chips.",
              Source.fromMemory("40 CFR 745, subpart E")),
          new Caution(
              "Silica: cutting tile and mortar raises it; wet the cut or collect the dust.",
              "Dust from tile and mortar is harmful: keep windows shut while it is cut.",
              Source.fromMemory("29 CFR 1926.1153")),
          new Caution(
              "Nails on the ground: tarps below before the first one falls, a magnet over lawn and drive every evening.",
              "Nails: we sweep with a magnet every evening; wear shoes in the yard until we have done it the last time."));

  private Cautions() {}

  /** What is said to a crew, without whose rule it is. */
  static List<String> toTheCrew() {
    return ON_THE_ROOF.stream().map(Caution::crew).toList();
  }

  /** What is said to a reader of the work on the roof. */
  static List<String> onTheRoof(Audience audience) {
    return ON_THE_ROOF.stream().map(caution -> caution.said(audience)).toList();
  }
}

package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Source;

/** What is said beside every result, because the work can hurt someone. */
public final class Cautions {

  /** Beside anything structural. */
  public static final String SCREENING =
      "Screening only: local code and a licensed engineer decide.";

  /** Beside anything that straightens a rafter. */
  static final String SISTERS =
      "Where this says STOP, nothing is done to the rafters before whoever it names has written what. Sisters and shims"
          + " set to a string line flatten a deck; by themselves they do not make a rafter strong enough.";

  /**
   * One thing that can hurt someone on or below a roof.
   *
   * @param crew as it is said to whoever works there
   * @param source the rule or practice, with how it was had
   */
  private record Caution(String crew, Source source) {

    private Caution(String crew) {
      this(crew, Source.COMMON_PRACTICE);
    }

    private String said() {
      return "%s (%s)".formatted(crew, source);
    }
  }

  private static final List<Caution> ON_THE_ROOF =
      List.of(
          new Caution(
              "Falls: work 6 ft or more above a lower level needs guardrails, nets or personal fall arrest.",
              Source.fromMemory("29 CFR 1926.501")),
          new Caution(
              "Ladder and edge: one foot out for four up, tied, 3 ft above the eave; every hole in the deck is covered and marked.",
              Source.fromMemory("29 CFR 1926.1053 and 1926.502")),
          new Caution(
              "Weak deck: nobody steps on a deck until it has been found strong enough; a loose sheet over a soft spot protects nobody."),
          new Caution(
              "Loads: spread stacks over several rafters near their bearings; on an old roof take 20 psf as the ceiling."),
          new Caution(
              "Before a rafter is cut, both sides of it are held up. Trusses are never cut or sistered without the truss designer's drawing.",
              Source.fromMemory("IRC R802.10.4 for trusses")),
          new Caution(
              "Sheets are what braces the roof against wind and racking: open a few at a time, brace the rafters across, nail down before you go on."),
          new Caution("Open no more roof in a day than can be closed before rain."),
          new Caution(
              "Live wires: look from the attic for cables against the deck, set the saw no deeper than the deck, keep ladders and metal away from overhead lines.",
              Source.fromMemory("29 CFR 1926.416")),
          new Caution(
              "Vermiculite, loose and pebbly in an attic, is taken to hold asbestos: do not stir it, do not let debris fall into it.",
              Source.fromMemory(
                  "guidance of the Environmental Protection Agency on vermiculite insulation")),
          new Caution(
              "Asbestos: old felt, shingles, siding and flue pipes are sampled before they are broken.",
              Source.fromMemory("40 CFR 61.145 and 29 CFR 1926.1101")),
          new Caution(
              "Lead: paint on houses from before 1978 is taken to hold it; trim and soffits are cut by its rules.",
              Source.fromMemory("40 CFR 745, subpart E")),
          new Caution(
              "Silica: cutting tile and mortar raises it; wet the cut or collect the dust.",
              Source.fromMemory("29 CFR 1926.1153")),
          new Caution(
              "Nails on the ground: tarps below before the first one falls, a magnet over lawn and drive every evening."));

  private Cautions() {}

  /** What is said to a crew, without whose rule it is. */
  static List<String> toTheCrew() {
    return ON_THE_ROOF.stream().map(Caution::crew).toList();
  }

  /** What is said of the work on the roof. */
  static List<String> onTheRoof() {
    return ON_THE_ROOF.stream().map(Caution::said).toList();
  }
}

package sheathwright.workbook.page;

import java.util.List;

/** What is said beside every result, because the work can hurt someone. */
final class Cautions {

  /** Beside anything structural. */
  static final String SCREENING = "Screening only: local code and a licensed engineer decide.";

  /** Beside anything that straightens a rafter. */
  static final String SISTERS =
      "Where this says STOP, nothing is done to the rafters before a licensed engineer has written what. Sisters and shims"
          + " set to a string line flatten a deck; by themselves they do not make a rafter strong enough.";

  /** Beside the work on the roof. */
  static final List<String> ON_THE_ROOF =
      List.of(
          "Falls: work 6 ft or more above a lower level needs guardrails, nets or personal fall arrest (29 CFR 1926.501).",
          "Weak deck: nobody steps on a deck until it has been found strong enough; a loose sheet over a soft spot protects nobody.",
          "Loads: spread stacks over several rafters near their bearings; on an old roof take 20 psf as the ceiling.",
          "Before a rafter is cut, both sides of it are held up. Trusses are never cut or sistered without the truss engineer's drawing.",
          "Old roofing may hold asbestos and old paint lead; cutting tile and mortar raises silica. Each has its own rules.",
          "Open no more roof in a day than can be closed before rain.");

  private Cautions() {}
}

package sheathwright.workbook.paper;

import java.util.List;
import sheathwright.job.Estimate;
import sheathwright.workbook.book.Tab;

/**
 * What to look at when something leaks, what comes back unless it is put right, and what not to do.
 * It is what the trade does; nobody published it.
 */
final class IfItLeaksPage {

  private static final int[] WIDTHS = {40, 12, 12, 13, 14, 17};

  private static final List<String> LOOK =
      List.of(
          "Write down the day, the weather, from where the wind came, and where the water shows. Take a photograph.",
          "Water shows lower than it comes in: it runs down the underside of the deck and along rafters. Find the wet place on the map, and look up the slope from it.",
          "Look first at what goes through the roof or ends on it above that place: chimney, vent, skylight, valley, wall. Then at the eave, where ice and gutters hold water back.",
          "Water that comes in cold weather without rain is often moist air from the house that turns to water on cold wood. Look for a fan or a hose that blows into the attic.",
          "See on the map whether the place is new or was kept. A new sheet that is wet tells of water from above; so does a kept one, and it may be soft by now.",
          "Tell us which side of the roof, how far up and how far along, or the number of the place if the list has one, and send the photograph. With that we know what lies there, how it is held, and what it looked like when it was open.");

  private static final List<String> CAUTIONS =
      List.of(
          "Nobody steps on a roof, or into an attic between the rafters, that has not been found strong enough. A wet deck may not bear a person.",
          "Stay away from wires and lamps that water runs over.",
          "No rafter is cut, drilled or notched, and no truss changed, without whoever is licensed to say so.",
          "Screening only: local code and a licensed engineer decide.");

  private IfItLeaksPage() {}

  static void write(Paper paper, Estimate estimate) {
    Tab tab = paper.page("If it leaks", WIDTHS);
    tab.heading("If something leaks");
    LOOK.forEach(tab::paragraph);
    List<String> found = Causes.sentences(estimate);
    if (!found.isEmpty()) {
      tab.heading("What comes back");
      found.forEach(tab::paragraph);
    }
    tab.heading("Please");
    CAUTIONS.forEach(tab::paragraph);
  }
}

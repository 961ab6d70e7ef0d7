package sheathwright.workbook.paper;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.life.Cause;
import sheathwright.job.life.MarkFields;
import sheathwright.workbook.book.Tab;

/**
 * What to look at when something leaks, what comes back unless it is put right, and what not to do.
 * It is what the trade does; nobody published it.
 */
final class LeakPage {

  private static final int[] WIDTHS = {40, 12, 12, 13, 14, 17};

  private static final List<String> LOOK =
      List.of(
          "Write down the day, the weather, from where the wind came, and where the water shows. Take a photograph.",
          "Water shows lower than it comes in: it runs down the underside of the deck and along rafters. Find the wet place on the map, and look up the slope from it.",
          "Look first at what goes through the roof or ends on it above that place: chimney, vent, skylight, valley, wall. Then at the eave, where ice and gutters hold water back.",
          "Water that comes in cold weather without rain is often moist air from the house that turns to water on cold wood. Look for a fan or a hose that blows into the attic.",
          "See on the map whether the place is new or was kept. A new sheet that is wet tells of water from above; so does a kept one, and it may be soft by now.",
          "Tell us the key of the place, such as A-3-5, and send the photograph. With the key we know what lies there, how it is held, and what it looked like when it was open.");

  private static final List<String> CAUTIONS =
      List.of(
          "Nobody steps on a roof, or into an attic between the rafters, that has not been found strong enough. A wet deck may not bear a person.",
          "Stay away from wires and lamps that water runs over.",
          "No rafter is cut, drilled or notched, and no truss changed, without whoever is licensed to say so.",
          "Screening only: local code and a licensed engineer decide.");

  private static final Map<Cause, String> PUT_RIGHT =
      new EnumMap<>(
          Map.of(
              Cause.LEAK, "the place where the water came in is made tight",
              Cause.FAN, "the fan blows outside and not into the attic",
              Cause.EAVE_ICE, "the ceiling below is made tight and the attic stays cold",
              Cause.CONDENSATION,
                  "moist air from the house is kept out of the attic, and the attic is aired"));

  private LeakPage() {}

  static Tab tab(Paper paper) {
    return paper.page("If it leaks", WIDTHS);
  }

  static void write(Tab tab, Estimate estimate) {
    tab.heading("If something leaks");
    LOOK.forEach(tab::paragraph);
    Set<Cause> found = causes(estimate);
    if (!found.isEmpty()) {
      tab.heading("What comes back");
      found.forEach(
          cause ->
              tab.paragraph(
                  "Some of what was found came from: %s. It comes back unless %s."
                      .formatted(cause.word().replace('-', ' '), PUT_RIGHT.get(cause))));
    }
    tab.heading("Please");
    CAUTIONS.forEach(tab::paragraph);
  }

  /** Why the marks were there, as far as that goes on. */
  private static Set<Cause> causes(Estimate estimate) {
    Set<Cause> all = EnumSet.noneOf(Cause.class);
    for (Deck.Marked marked : estimate.deck().marked()) {
      if (marked.row().has(MarkFields.CAUSE)) {
        Cause cause = marked.row().of(MarkFields.CAUSE).value();
        if (PUT_RIGHT.containsKey(cause)) {
          all.add(cause);
        }
      }
    }
    return all;
  }
}

package sheathwright.roof;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.Units;

/** What the planes of a house rest on: the measures of its body and of what stands on its sides. */
final class HouseMeasures {

  private final Reading reading = new Reading();

  /** The measures of one side of the body. */
  HouseMeasures body(HouseSide side, Figure<Length> eave, Figure<Length> run) {
    reading.number("eave of the " + side.word(), eave, Units.FOOT);
    reading.number("run of the " + side.word(), run, Units.FOOT);
    return this;
  }

  /** The measures of what stands on a side. */
  HouseMeasures parts(List<HousePart> parts) {
    for (HousePart part : parts) {
      String what = part.word() + " of the " + part.side().word();
      reading.number(what + ", along the eave", part.at(), Units.FOOT);
      reading.number(what + ", from the eave", part.from(), Units.FOOT);
      reading.number(what + ", width", part.width(), Units.FOOT);
      reading.number(what + ", depth", part.depth(), Units.FOOT);
    }
    return this;
  }

  /** A plane that was made from them. */
  Plane under(Plane plane) {
    return plane.restingOn(reading);
  }
}

package sheathwright.leveling.string;

import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * The worst that a straightedge of one length shows on a plane, one way.
 *
 * @param limit that was asked about
 * @param way along the rafters or across them
 * @param deviation from the straightedge, low positive, high negative
 * @param place where, in words; the words straight if there is none
 * @param check its size against what is allowed
 */
public record FlatnessFinding(
    FlatnessLimit limit,
    FlatnessWay way,
    Figure<Length> deviation,
    Choice<String> place,
    Check check) {

  @Override
  public String toString() {
    return "%s; %s".formatted(check, place);
  }
}

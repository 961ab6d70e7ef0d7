package sheathwright.leveling.plan;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.YesNo;

/**
 * One strip on top of a rafter.
 *
 * @param rafter that it lies on
 * @param from its lower end, from the eave up the slope
 * @param to its upper end
 * @param length of it
 * @param greatest build-up under it
 * @param thickest thickness, to the next step
 * @param taper by which it grows thicker fastest, as inches in 12
 * @param gradual whether that is within what is wanted
 * @param thin whether it is too thin to rip: felt, shingle or thin plywood instead
 * @param nail length of the sheet's nail over its thickest place
 * @param stations its thickness at both ends and at every station between
 */
public record ShimStrip(
    String rafter,
    Figure<Length> from,
    Figure<Length> to,
    Figure<Length> length,
    Figure<Length> greatest,
    Figure<Length> thickest,
    Figure<Ratio> taper,
    Choice<YesNo> gradual,
    Choice<YesNo> thin,
    Figure<Length> nail,
    List<Station> stations) {

  /**
   * How thick a strip is at one place.
   *
   * @param rafter that it lies on
   * @param up from the eave up the slope
   * @param buildUp there
   * @param thickness to the next step
   */
  public record Station(
      String rafter, Figure<Length> up, Figure<Length> buildUp, Figure<Length> thickness) {

    @Override
    public String toString() {
      return "%s at %s".formatted(thickness, up);
    }
  }

  @Override
  public String toString() {
    return "strip on rafter %s from %s to %s, if the first line of its plan allows it"
        .formatted(rafter, from, to);
  }

  static Roll roll(String plane, List<ShimStrip> strips) {
    return Roll.of(
        "shim_strips_of_" + plane,
        "the strips",
        strips,
        Roll.<ShimStrip>column("rafter", strip -> Choice.literal(strip.rafter())),
        Roll.column("from_in", ShimStrip::from),
        Roll.column("to_in", ShimStrip::to),
        Roll.column("strip_ft", ShimStrip::length),
        Roll.column("greatest_in", ShimStrip::greatest),
        Roll.column("thickest_in", ShimStrip::thickest),
        Roll.column("taper_in_12", ShimStrip::taper),
        Roll.column("gradual", ShimStrip::gradual),
        Roll.column("thin", ShimStrip::thin),
        Roll.column("nail_in", ShimStrip::nail));
  }

  static Roll thicknesses(String plane, List<ShimStrip> strips) {
    return Roll.of(
        "shim_thicknesses_of_" + plane,
        "how thick the strips are",
        strips.stream().flatMap(strip -> strip.stations().stream()).toList(),
        Roll.<Station>column("rafter", place -> Choice.literal(place.rafter())),
        Roll.column("up_in", Station::up),
        Roll.column("build_up_in", Station::buildUp),
        Roll.column("thickness_in", Station::thickness));
  }
}

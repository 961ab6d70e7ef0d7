package sheathwright.framing.rafter;

import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.SectionModulus;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.SimpleSpan;

/**
 * Loads that act together on a rafter, with the duration factor of the shortest of them.
 *
 * @param name begins the names of its steps: {@code roof_live}
 * @param spoken as it is spoken of: {@code dead and roof live load}
 * @param load on each inch of the horizontal projection
 * @param duration C_D
 */
record LoadCase(String name, String spoken, Figure<LineForce> load, Figure<Ratio> duration) {

  /** w ÷ C_D: the load that would ask as much of wood that bears it for ten years. */
  Figure<LineForce> lasting() {
    return load.dividedBy(duration).as(name + "_lasting_lb_per_in", Units.POUND_PER_INCH);
  }

  /** M ÷ S against F_b' C_D. */
  Check bending(Figure<Stress> value, Figure<SectionModulus> s, Figure<Length> span) {
    var stress =
        SimpleSpan.moment(load, span)
            .dividedBy(s)
            .as(name + "_bending_stress_psi", Units.PSI, RepetitiveMember.NDS_2018.at("3.3.2"));
    return Check.of(
        "bending under " + spoken, name + "_bending_ratio", stress, allowed("bending", value));
  }

  /** The shear stress over the seat against F_v' C_D. */
  Check shear(Figure<Stress> value, SeatCut cut, Figure<Length> span) {
    var stress =
        cut.shearStress(SimpleSpan.reaction(load, span))
            .as(name + "_shear_stress_psi", Units.PSI, SeatCut.SHEAR);
    return Check.of(
        "shear under " + spoken, name + "_shear_ratio", stress, allowed("shear", value));
  }

  private Figure<Stress> allowed(String what, Figure<Stress> value) {
    return value
        .times(duration)
        .as(
            name + "_" + what + "_allowed_psi",
            Units.PSI,
            RepetitiveMember.NDS_2018.at("Table 4.3.1"));
  }
}

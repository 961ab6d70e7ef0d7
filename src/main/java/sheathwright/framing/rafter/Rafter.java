package sheathwright.framing.rafter;

import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.DressedSizes;
import sheathwright.wood.Grade;
import sheathwright.wood.LumberSize;
import sheathwright.wood.LumberValues;
import sheathwright.wood.RafterSection;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.SimpleSpan;
import sheathwright.wood.Species;
import sheathwright.wood.ValueSet;

/**
 * One of many like rafters under a deck: its section, its adjusted design values, and the load that
 * each inch of its horizontal projection carries. Spans and checks start from here.
 */
final class Rafter {

  static final Source STATICS = SimpleSpan.STATICS;

  final RafterSection section;
  final Figure<Stress> bending;
  final Figure<Stress> shear;
  final Figure<Stress> bearing;
  final Figure<Stress> modulus;
  final Figure<LineForce> totalLoad;
  final Figure<LineForce> liveLoad;
  final Figure<Ratio> deflectionLimit;

  Rafter(
      OneOf<Species> species,
      OneOf<Grade> grade,
      OneOf<LumberSize> size,
      Figure<Length> spacing,
      Figure<Pressure> live,
      Figure<Pressure> dead,
      OneOf<RafterLoad> load,
      Figure<Ratio> deflectionLimit,
      OneOf<ValueSet> valueSet) {
    var s = RepetitiveMember.spacing(spacing);
    var lr =
        live.within(
                "live_psf",
                Units.PSF,
                Limits.between(1, 300, "of horizontal projection; 20 is the usual least"))
            .symbol("q_live");
    var d =
        dead.within(
                "dead_psf",
                Units.PSF,
                Limits.between(0, 100, "of horizontal projection; 10 and 20 are the tables' own"))
            .symbol("q_dead");
    this.deflectionLimit = SagLimits.passing(deflectionLimit);

    var values = new LumberValues(species, grade, size, valueSet);
    section =
        RafterSection.of(DressedSizes.thickness(values.size()), DressedSizes.width(values.size()));

    var cd =
        LumberValues.loadDuration(load.choice().argument("load"))
            .as("load_duration_factor", Units.RATIO)
            .symbol("C_D");
    var cf = values.sizeFactor().as("size_factor", Units.RATIO).symbol("C_F");
    var cr = RepetitiveMember.factor(s);
    var fb = values.bending().as("bending_value_psi", Units.PSI).symbol("F_b");
    var fv = values.shear().as("shear_value_psi", Units.PSI).symbol("F_v");
    bending =
        fb.times(cd)
            .times(cf)
            .times(cr)
            .as("adjusted_bending_psi", Units.PSI, RepetitiveMember.NDS_2018.at("Table 4.3.1"))
            .symbol("F_b'");
    shear =
        fv.times(cd)
            .as("adjusted_shear_psi", Units.PSI, RepetitiveMember.NDS_2018.at("Table 4.3.1"))
            .symbol("F_v'");
    bearing = values.bearing().as("bearing_value_psi", Units.PSI).symbol("F_c⊥");
    modulus = values.modulus().as("modulus_psi", Units.PSI).symbol("E");

    totalLoad =
        lr.plus(d).times(s).as("total_load_lb_per_in", Units.POUND_PER_INCH, STATICS).symbol("w");
    liveLoad =
        lr.times(s).as("live_load_lb_per_in", Units.POUND_PER_INCH, STATICS).symbol("w_live");
  }
}

package sheathwright.framing.rafter;

import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.loads.UniformLoad;
import sheathwright.wood.DressedSizes;
import sheathwright.wood.Lumber;
import sheathwright.wood.LumberValues;
import sheathwright.wood.Nds;
import sheathwright.wood.RafterSection;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.SimpleSpan;

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

  Rafter(Lumber lumber, UniformLoad load, OneOf<RafterLoad> kind, Figure<Ratio> deflectionLimit) {
    this.deflectionLimit = SagLimits.live(deflectionLimit).passing();
    section =
        RafterSection.of(DressedSizes.thickness(lumber.size()), DressedSizes.width(lumber.size()));

    var values = new LumberValues(lumber);
    var s = load.spacing();
    var cd = Nds.loadDuration("load_duration_factor", kind.choice().argument("load"));
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
        load.live()
            .plus(load.dead())
            .times(s)
            .as("total_load_lb_per_in", Units.POUND_PER_INCH, STATICS)
            .symbol("w");
    liveLoad =
        load.live()
            .times(s)
            .as("live_load_lb_per_in", Units.POUND_PER_INCH, STATICS)
            .symbol("w_live");
  }
}

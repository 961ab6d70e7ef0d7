package sheathwright.framing.sister;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.wood.GradeStamp;
import sheathwright.wood.Lumber;
import sheathwright.wood.LumberSize;
import sheathwright.wood.LumberValues;
import sheathwright.wood.Nds;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.ValueSet;

/** New lumber off the yard, of one species and grade, adjusted for a rafter's place and load. */
final class SisterValues {

  private static final Choice<ValueSet> TODAY = ValueSet.NDS2018.choice().as("sister_value_set");

  private final GradeStamp stamp;
  private final Figure<Ratio> loadDuration;
  private final Figure<Ratio> repetitive;

  SisterValues(GradeStamp stamp, OneOf<RafterLoad> load, Figure<Length> spacing) {
    this.stamp = stamp.of(PlySection.SISTER);
    loadDuration = Nds.loadDuration("load_duration_factor", load.choice().argument("load"));
    repetitive = RepetitiveMember.factor(spacing);
  }

  /** F_b' of a piece of this size. */
  Figure<Stress> bending(String whose, Choice<LumberSize> size) {
    LumberValues values = values(size);
    var fb = values.bending().as(whose + "_bending_value_psi", Units.PSI).symbol("F_b_" + whose);
    var cf = values.sizeFactor().as(whose + "_size_factor", Units.RATIO).symbol("C_F_" + whose);
    return fb.times(loadDuration)
        .times(cf)
        .times(repetitive)
        .as(whose + "_bending_psi", Units.PSI, Source.secondHand("NDS 2018, Table 4.3.1"))
        .symbol("F_b'_" + whose);
  }

  /** E of a piece of this size. */
  Figure<Stress> modulus(String whose, Choice<LumberSize> size) {
    return values(size).modulus().as(whose + "_modulus_psi", Units.PSI).symbol("E_" + whose);
  }

  private LumberValues values(Choice<LumberSize> size) {
    return new LumberValues(new Lumber(stamp.species(), stamp.grade(), size, TODAY));
  }
}

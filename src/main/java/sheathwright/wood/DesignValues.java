package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.published.Published;

/** What graded sticks may be asked to bear. */
public final class DesignValues {

  private static final Source TABLE = RepetitiveMember.NDS_2018.at("Table 4.3.1");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);
  private static final Table FLAT_USE =
      Published.table("nds/2018/flat-use.csv", "flat_use", "flat use factors", 1);

  private DesignValues() {}

  /**
   * What a graded stick may be asked to bear where it serves, with every factor that says so.
   *
   * <pre>
   * F_b'  = F_b C_D C_M C_t C_L C_F C_fu C_i C_r
   * F_v'  = F_v C_D C_M C_t C_i
   * F_c⊥' = F_c⊥ C_M C_t C_i C_b
   * E' = E C_M C_t C_i      E_min' = E_min C_M C_t C_i
   * </pre>
   *
   * <p>Does not cover decay, splits, notches, sticks whose grade nobody can read, machine-graded
   * lumber, timbers, or tension and compression along the grain. Ripped stock is refused. Screening
   * only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * designValues(Member.of(Lumber.of(DOUGLAS_FIR_LARCH, NO_2, SIZE_2X8, NDS2018)), DURATION_ROOF_LIVE, MemberUse.spacing(in(24)), Seat.of(in(1.5))).bending() // 1,552.5 psi
   * }</pre>
   *
   * @param member the stick where it serves; what it measures counts for stability alone
   * @param loadDuration the shortest load in the combination
   * @param use how it stands among its neighbors
   * @param seat where it sits
   * @return five values in psi, and fourteen factors
   * @throws RefusedException if a number lies outside its range, the value set does not hold the
   *     wood, the stock is ripped, or the slenderness ratio is over 50
   * @see "NDS 2018 sections 2.3, 3.3.3, 3.10.4 and 4.3 with its Supplement, secondary source;
   *     temperature and incising factors, southern pine and the values of 1997 from memory"
   */
  @LibraryFunction(words = {"lumber strength", "species", "grade"})
  public static AdjustedValues designValues(
      Member member,
      @Column("load_duration") OneOf<LoadDuration> loadDuration,
      MemberUse use,
      Seat seat) {
    var wood = new AdjustedWood(member);
    var section = member.section();
    Condition isFlat = use.flatwise().choice().is(YesNo.YES);

    var cd =
        Nds.loadDuration("load_duration_factor", loadDuration.choice().argument("load_duration"));
    var cr = RepetitiveMember.factor(use.spacing());
    var star =
        wood.bending.times(cd).times(cr).as("unflat_bending_psi", Units.PSI, TABLE).symbol("F_b*");
    var lu = Figure.choose(isFlat, NOTHING, use.unbraced()).as("unbraced_on_edge_in", Units.INCH);
    var cl =
        new LateralStability(lu, section.depth(), section.thickness(), wood.minModulus, star)
            .allowedFactor();
    var flat =
        FLAT_USE
            .number(Units.RATIO, "cfu", member.lumber().size())
            .as("flat_use_table", Units.RATIO);
    var cfu =
        Figure.choose(isFlat, flat, ONE)
            .as("flat_use_factor", Units.RATIO, FLAT_USE.source())
            .symbol("C_fu");
    var cb = seat.areaFactor();
    return new AdjustedValues(
        star.times(cl).times(cfu).as("bending_psi", Units.PSI, TABLE).symbol("F_b'"),
        wood.shear.times(cd).as("shear_psi", Units.PSI, TABLE).symbol("F_v'"),
        wood.bearing.times(cb).as("bearing_psi", Units.PSI, TABLE).symbol("F_c⊥'"),
        wood.modulus,
        wood.minModulus,
        cd,
        wood.service.wetBending,
        wood.service.wetShear,
        wood.service.wetBearing,
        wood.service.wetModulus,
        wood.service.warmStress,
        wood.service.warmModulus,
        cl,
        wood.sizeFactor,
        cfu,
        wood.service.incisedStress,
        wood.service.incisedModulus,
        cr,
        cb);
  }

  /**
   * The design values of a stick where it serves, and every factor that made them.
   *
   * @param bending F_b'
   * @param shear F_v'
   * @param bearing F_c⊥'
   * @param modulus E'
   * @param minModulus E_min'
   * @param loadDuration C_D, on bending and shear
   * @param wetBending C_M on bending
   * @param wetShear C_M on shear
   * @param wetBearing C_M on bearing
   * @param wetModulus C_M on both moduli
   * @param warmStress C_t on bending, shear and bearing
   * @param warmModulus C_t on both moduli
   * @param stability C_L on bending
   * @param size C_F on bending
   * @param flatUse C_fu on bending
   * @param incisedStress C_i on bending and shear
   * @param incisedModulus C_i on both moduli
   * @param repetitive C_r on bending
   * @param bearingLength C_b on bearing
   */
  public record AdjustedValues(
      @Column("bending_psi") Figure<Stress> bending,
      @Column("shear_psi") Figure<Stress> shear,
      @Column("bearing_psi") Figure<Stress> bearing,
      @Column("modulus_psi") Figure<Stress> modulus,
      @Column("min_modulus_psi") Figure<Stress> minModulus,
      @Column("load_duration_factor") Figure<Ratio> loadDuration,
      @Column("wet_bending_factor") Figure<Ratio> wetBending,
      @Column("wet_shear_factor") Figure<Ratio> wetShear,
      @Column("wet_bearing_factor") Figure<Ratio> wetBearing,
      @Column("wet_modulus_factor") Figure<Ratio> wetModulus,
      @Column("temperature_stress_factor") Figure<Ratio> warmStress,
      @Column("temperature_modulus_factor") Figure<Ratio> warmModulus,
      @Column("stability_factor") Figure<Ratio> stability,
      @Column("size_factor") Figure<Ratio> size,
      @Column("flat_use_factor") Figure<Ratio> flatUse,
      @Column("incising_stress_factor") Figure<Ratio> incisedStress,
      @Column("incising_modulus_factor") Figure<Ratio> incisedModulus,
      @Column("repetitive_factor") Figure<Ratio> repetitive,
      @Column("bearing_area_factor") Figure<Ratio> bearingLength) {}
}

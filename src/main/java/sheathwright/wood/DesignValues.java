package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
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
   * designValues(DOUGLAS_FIR_LARCH, NO_2, SIZE_2X8, NDS2018, DURATION_ROOF_LIVE, in(24), DRESSED, in(0), in(0), DRY, number(70), NO, NO, in(1.5), in(0), in(0)).bending() // 1,552.5 psi
   * }</pre>
   *
   * @param species species group on the grade stamp
   * @param grade visual grade on the grade stamp
   * @param size nominal size, which finds the values
   * @param valueSet edition of the design values, fitting the age of the wood
   * @param loadDuration the shortest load in the combination
   * @param spacing center to center of at least three sticks that a deck joins, 4 in to 48 in; the
   *     repetitive factor is taken up to 24 in
   * @param stock how it came to its size, which says what it measures; for stability alone
   * @param thickness as measured, 0 in to 6 in; 0 takes what the stock says
   * @param depth as measured, 0 in to 24 in; 0 takes what the stock says
   * @param moisture whether it stays at 19 % or less
   * @param temperature degrees Fahrenheit that the wood keeps for long, 0 to 150
   * @param incised whether slits were pressed into it for a preservative
   * @param flatwise whether it lies on its wide face
   * @param bearingLength length of its seat, 0.5 in to 12 in
   * @param endDistance from the seat to the nearer end of the stick, 0 in to 240 in
   * @param unbraced between the places that hold the upper edge, 0 in to 600 in; 0 where a nailed
   *     deck holds it along its length
   * @return five values in psi, and fourteen factors
   * @throws RefusedException if a number lies outside its range, the value set does not hold the
   *     wood, the stock is ripped, or the slenderness ratio is over 50
   * @see "NDS 2018 sections 2.3, 3.3.3, 3.10.4 and 4.3 with its Supplement, secondary source;
   *     temperature and incising factors, southern pine and the values of 1997 from memory"
   */
  @LibraryFunction
  public static AdjustedValues designValues(
      @Column("species") OneOf<Species> species,
      @Column("grade") OneOf<Grade> grade,
      @Column("size") OneOf<LumberSize> size,
      @Column("value_set") OneOf<ValueSet> valueSet,
      @Column("load_duration") OneOf<LoadDuration> loadDuration,
      @Column("spacing_in") Figure<Length> spacing,
      @Column(value = "stock", preset = "dressed") OneOf<Stock> stock,
      @Column(value = "thickness_in", preset = "0") Figure<Length> thickness,
      @Column(value = "depth_in", preset = "0") Figure<Length> depth,
      @Column(value = "moisture", preset = "dry") OneOf<ServiceMoisture> moisture,
      @Column(value = "temperature_f", preset = "70") Figure<Ratio> temperature,
      @Column(value = "incised", preset = "no") OneOf<YesNo> incised,
      @Column(value = "flatwise", preset = "no") OneOf<YesNo> flatwise,
      @Column(value = "bearing_in", preset = "1.5") Figure<Length> bearingLength,
      @Column(value = "end_distance_in", preset = "0") Figure<Length> endDistance,
      @Column(value = "unbraced_in", preset = "0") Figure<Length> unbraced) {
    var nominal = size.choice().argument("size");
    var values = new LumberValues(species, grade, nominal, valueSet);
    var wood = new AdjustedWood(values, moisture, temperature, incised);
    var section = StockSection.of(nominal, stock, thickness, depth);
    var open =
        unbraced.within(
            "unbraced_in",
            Units.INCH,
            Limits.between(0, 600, "0 where a nailed deck holds the upper edge"));
    var seat = BearingSeat.length(bearingLength);
    Condition isFlat = flatwise.choice().argument("flatwise").is(YesNo.YES);

    var cd =
        LumberValues.loadDuration(loadDuration.choice().argument("load_duration"))
            .as("load_duration_factor", Units.RATIO)
            .symbol("C_D");
    var cr = RepetitiveMember.factor(RepetitiveMember.spacing(spacing));
    var star =
        wood.bending.times(cd).times(cr).as("unflat_bending_psi", Units.PSI, TABLE).symbol("F_b*");
    var lu = Figure.choose(isFlat, NOTHING, open).as("unbraced_on_edge_in", Units.INCH);
    var cl =
        new LateralStability(lu, section.depth(), section.thickness(), wood.minModulus, star)
            .allowedFactor();
    var flat = FLAT_USE.number(Units.RATIO, "cfu", values.size()).as("flat_use_table", Units.RATIO);
    var cfu =
        Figure.choose(isFlat, flat, ONE)
            .as("flat_use_factor", Units.RATIO, FLAT_USE.source())
            .symbol("C_fu");
    var cb = BearingSeat.areaFactor(seat, BearingSeat.endDistance(endDistance));
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
}

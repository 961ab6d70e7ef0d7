package sheathwright.framing.rafter;

import java.util.List;
import sheathwright.catalog.Assumed;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.SaysWhich;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.Governing.Named;
import sheathwright.framing.rafter.RafterSpan.Governs;
import sheathwright.framing.stop.RepairStops;
import sheathwright.loads.UniformLoad;
import sheathwright.wood.Lumber;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.SimpleSpan;

/** Spans and checks of sawn rafters, by the method that made the code's span tables. */
public final class Rafters {

  private static final Source STATICS = Rafter.STATICS;

  private Rafters() {}

  /**
   * How far a rafter of sound lumber may span on the horizontal projection before it bends too hard
   * or sags too far.
   *
   * <pre>
   * span = the lesser of √(8 F_b' S ÷ w) and ∛(384 E I ÷ (5 n w_live))
   * F_b' = F_b C_D C_F C_r
   * </pre>
   *
   * <p>Does not cover shear and bearing (see {@code rafter_check}), rafter ties above the plate,
   * notches, decay, ripped or re-sawn stock, trusses, slopes of 3 in 12 and less, where the code
   * asks for L/240 and below 3 for a ridge beam, or a deck that is off. Screening only: local code
   * and a licensed engineer decide.
   *
   * <pre>{@code
   * rafterMaxSpan(Lumber.of(SPRUCE_PINE_FIR, NO_2, SIZE_2X6, NDS2018), UniformLoad.spacing(in(16)).live(psf(20)).dead(psf(10)), ROOF_LIVE, number(240)).inFeetAndInches() // 13-5
   * }</pre>
   *
   * @param lumber of the rafter, taken at its dry dressed size
   * @param load on each of the rafters
   * @param kind which of the two live loads it is, roof live load or ground snow
   * @param deflectionLimit span divided by this is the sag allowed under live load, 180 to 360; 180
   *     without a ceiling below, 240 with one, 360 with a plaster one
   * @return span in inches, not capped; the same to the nearest inch in feet-inches; what governs
   * @throws RefusedException if a number lies outside its range, or the value set does not hold the
   *     species
   * @see "IRC 2021 Tables R802.4.1(1) to (8) and IBC 2018 Table 2308.7.2, reproduced; NDS 2018
   *     sections 3 and 4, secondary source"
   */
  @LibraryFunction(words = {"span table", "how far"})
  public static RafterSpan rafterMaxSpan(
      Lumber lumber,
      UniformLoad load,
      @Column("load") @Assumed("roof-live") @SaysWhich("live_psf") OneOf<RafterLoad> kind,
      @Column("deflection_limit") @Assumed("180") Figure<Ratio> deflectionLimit) {
    var r = new Rafter(lumber, load, kind, deflectionLimit);

    var bending = bendingSpan(r);
    var deflection = deflectionSpan(r);

    var span =
        bending
            .min(deflection)
            .as("span_in", Units.INCH, Source.secondHand("method of the IRC rafter tables"));
    return new RafterSpan(
        span,
        Choice.feetAndInches(span.rounded()).as("span_ft_in"),
        Choice.choose(bending.isAtMost(deflection), Governs.BENDING, Governs.DEFLECTION)
            .as("governs"));
  }

  /**
   * Whether a rafter of sound lumber carries its loads over a given span: bending, shear, sag and
   * bearing, each as the part used up of what is allowed, and the longest span that passes.
   *
   * <pre>
   * bending = (w L² ÷ 8 S) ÷ F_b'           shear = (3 w L ÷ 4 A) ÷ F_v'
   * sag = (5 w_live L⁴ ÷ 384 E I) ÷ (L ÷ n)   bearing = (w L ÷ 2 b l_b) ÷ F_c⊥
   * longest span = the least of √(8 F_b' S ÷ w), 4 A F_v' ÷ 3 w, ∛(384 E I ÷ 5 n w_live), 2 b l_b F_c⊥ ÷ w
   * </pre>
   *
   * <p>Does not cover rafter ties above the plate, notches, decay, cracks, ripped or re-sawn stock,
   * trusses, overhangs, slopes of 3 in 12 and less, where the code asks for L/240, or a deck that
   * is off (see {@code rafter_screening}); shear is taken at the support, not a depth away.
   * Screening only: local code and a licensed engineer decide, and where a ratio passes 1 they
   * decide before any repair.
   *
   * <pre>{@code
   * rafterCheck(Lumber.of(SPRUCE_PINE_FIR, NO_2, SIZE_2X6, NDS2018), UniformLoad.spacing(in(16)).live(psf(20)).dead(psf(10)), ROOF_LIVE, number(180), ClearSpan.of(ft(12))).ok() // yes
   * rafterCheck(Lumber.of(SPRUCE_PINE_FIR, NO_2, SIZE_2X6, NDS2018), UniformLoad.spacing(in(16)).live(psf(20)).dead(psf(10)), ROOF_LIVE, number(180), ClearSpan.of(ft(12))).governs() // bending
   * }</pre>
   *
   * @param lumber of the rafter, taken at its dry dressed size
   * @param load on each of the rafters
   * @param kind which of the two live loads it is, roof live load or ground snow
   * @param deflectionLimit span divided by this is the sag allowed under live load, 180 to 360; 180
   *     without a ceiling below, 240 with one, 360 with a plaster one
   * @param span what lies between the supports, and the seat on the plate
   * @return four ratios, each of which may be 1 at most, yes or no, which of the four is greatest,
   *     the longest span in feet at which all four pass, not capped, and who decides before any
   *     repair
   * @throws RefusedException if a number lies outside its range, or the value set does not hold the
   *     species
   * @see "NDS 2018 sections 3.3 to 3.5 and 3.10, secondary source"
   */
  @LibraryFunction(words = {"strength", "overload", "sagging", "does it hold"})
  public static RafterCheck rafterCheck(
      Lumber lumber,
      UniformLoad load,
      @Column("load") @Assumed("roof-live") @SaysWhich("live_psf") OneOf<RafterLoad> kind,
      @Column("deflection_limit") @Assumed("180") Figure<Ratio> deflectionLimit,
      ClearSpan span) {
    var r = new Rafter(lumber, load, kind, deflectionLimit);
    var inches = span.span().as("span_in", Units.INCH).symbol("L");
    var seat = span.bearing();

    var moment =
        SimpleSpan.moment(r.totalLoad, inches)
            .as("moment_in_lb", Units.INCH_POUND, STATICS)
            .symbol("M");
    var bendingStress =
        moment
            .dividedBy(r.section.sectionModulus())
            .as("bending_stress_psi", Units.PSI, RepetitiveMember.NDS_2018.at("3.3.2"));

    var reaction =
        SimpleSpan.reaction(r.totalLoad, inches)
            .as("reaction_lb", Units.POUND, STATICS)
            .symbol("R");
    var shearStress =
        SimpleSpan.shearStress(reaction, r.section.area())
            .as("shear_stress_psi", Units.PSI, RepetitiveMember.NDS_2018.at("3.4.2"));

    var sag =
        SimpleSpan.sag(r.liveLoad, inches, r.modulus, r.section.secondMoment())
            .as("live_sag_in", Units.INCH, STATICS);
    var sagAllowed =
        inches
            .dividedBy(r.deflectionLimit)
            .as("sag_allowed_in", Units.INCH, Source.secondHand("IRC Table R301.7"));

    var bearingStress =
        reaction
            .dividedBy(r.section.thickness().times(seat))
            .as("bearing_stress_psi", Units.PSI, RepetitiveMember.NDS_2018.at("3.10.2"));

    var bending = Check.of("bending", "bending_ratio", bendingStress, r.bending);
    var shear = Check.of("shear", "shear_ratio", shearStress, r.shear);
    var deflection = Check.of("live-load deflection", "deflection_ratio", sag, sagAllowed);
    var bearing = Check.of("bearing at the plate", "bearing_ratio", bearingStress, r.bearing);
    var ok = Condition.all(bending.ok(), shear.ok(), deflection.ok(), bearing.ok()).as("ok");
    return new RafterCheck(
        bending,
        shear,
        deflection,
        bearing,
        ok,
        Governing.of(
                List.of(
                    new Named(RafterLimit.BENDING, bending.ratio()),
                    new Named(RafterLimit.SHEAR, shear.ratio()),
                    new Named(RafterLimit.DEFLECTION, deflection.ratio()),
                    new Named(RafterLimit.BEARING, bearing.ratio())))
            .limit(),
        longest(r, seat),
        RepairStops.byStrength(ok.is(YesNo.YES)));
  }

  private static Figure<Length> longest(Rafter r, Figure<Length> seat) {
    var shear =
        SimpleSpan.spanByShear(r.shear, r.section.area(), r.totalLoad)
            .as("shear_span_in", Units.INCH, STATICS);
    var bearing =
        SimpleSpan.spanByBearing(r.bearing, r.section.thickness(), seat, r.totalLoad)
            .as("bearing_span_in", Units.INCH, STATICS);
    return bendingSpan(r)
        .min(shear)
        .min(deflectionSpan(r))
        .min(bearing)
        .as("longest_span_ft", Units.FOOT, STATICS);
  }

  private static Figure<Length> bendingSpan(Rafter r) {
    return SimpleSpan.spanByBending(r.bending, r.section.sectionModulus(), r.totalLoad)
        .as("bending_span_in", Units.INCH, STATICS);
  }

  private static Figure<Length> deflectionSpan(Rafter r) {
    return SimpleSpan.spanBySag(r.modulus, r.section.secondMoment(), r.deflectionLimit, r.liveLoad)
        .as("deflection_span_in", Units.INCH, STATICS);
  }
}

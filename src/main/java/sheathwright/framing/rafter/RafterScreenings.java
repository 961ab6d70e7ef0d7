package sheathwright.framing.rafter;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.Governing.Named;
import sheathwright.framing.stop.RepairStops;
import sheathwright.wood.AdjustedWood;
import sheathwright.wood.BearingSeat;
import sheathwright.wood.Grade;
import sheathwright.wood.LumberSize;
import sheathwright.wood.LumberValues;
import sheathwright.wood.RafterSection;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.ServiceMoisture;
import sheathwright.wood.SimpleSpan;
import sheathwright.wood.Species;
import sheathwright.wood.Stock;
import sheathwright.wood.StockSection;
import sheathwright.wood.ValueSet;

/** All that is asked of old rafters, before and while their deck is off. */
public final class RafterScreenings {

  private static final Figure<Length> NO_SPAN = Figure.of(0, Units.INCH);

  private RafterScreenings() {}

  /**
   * All that is asked of an old rafter against what it can give: every combination of loads, sag
   * with creep, its seat and birdsmouth, its tie, and how it stands while the deck is off.
   *
   * <pre>
   * bending = (w (L ÷ f)² ÷ 8 S) ÷ (F_b' C_D)       under D, D + L_r and D + S, f for the tie's height
   * shear   = (3 V ÷ 2 b d_n) (d ÷ d_n)² ÷ (F_v' C_D)
   * sag     = 5 w_live (L ÷ f)⁴ ÷ 384 E' I, with creep under w_live + K_cr w_dead, K_cr 1.5 if seasoned, else 2
   * bearing = (w L ÷ 2 b l_b) ÷ F_c⊥'              notch = notch ÷ (d ÷ 4)
   * deck off: bending against F_b* C_L without C_r, C_D 1.25, and R_B against 50
   * longest span = where the first of the checks with the deck on reaches 1; 0 if the notch is too deep
   * thrust  = w L ÷ (2 tan θ) ÷ (1 − H_C ÷ H_R)
   * </pre>
   *
   * <p>Does not cover decay, splits, cuts, spread walls, ripped stock, trusses, overhangs, wind,
   * unbalanced or drifted snow, stacked bundles, the nails of the heel joint, or whether the braces
   * hold. Where a rafter is damaged or a ratio passes 1, stop: a licensed engineer decides before
   * any repair. The longest span keeps the ties at the same part of the height and leaves the time
   * with the deck off aside. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * rafterScreening(DOUGLAS_FIR_LARCH, NO_2, SIZE_2X8, in(16), psf(20), psf(30), psf(10), number(180), NDS2018, ft(12), in(1.5), DRESSED, in(0), in(0), DRY, number(70), NO, YES, number(120), in(0), in(0), pitch(4), in(0), in(48), psf(20)).governs() // bending
   * }</pre>
   *
   * @param species species group on the grade stamp
   * @param grade visual grade on the grade stamp
   * @param size nominal size, which finds the values
   * @param spacing center to center, 4 in to 48 in; the repetitive factor is taken up to 24 in
   * @param roofLive roof live load on the horizontal projection, 1 psf to 100 psf
   * @param snow snow on the horizontal projection, 0 psf to 300 psf; never added to roof live load
   * @param dead dead load on the horizontal projection, 0 psf to 100 psf; it is taken whole while
   *     the deck is off
   * @param deflectionLimit span divided by this is the sag allowed under live load, 180 to 360; 180
   *     without a ceiling below, 240 with one, 360 with a plaster one
   * @param valueSet edition of the design values, fitting the age of the wood
   * @param span clear span on the horizontal projection, 1 ft to 40 ft
   * @param bearingLength length of the seat on the plate, 0.5 in to 12 in
   * @param stock how it came to its size, which says what it measures
   * @param thickness as measured, 0 in to 6 in; 0 takes what the stock says
   * @param depth as measured, 0 in to 24 in; 0 takes what the stock says
   * @param moisture whether it stays at 19 % or less
   * @param temperature degrees Fahrenheit that the wood keeps for long, 0 to 150
   * @param incised whether slits were pressed into it for a preservative
   * @param seasoned whether it is known to have been dry when it was first loaded, so that it
   *     creeps less; no where nobody knows, for most old framing was put up green
   * @param totalDeflectionLimit span divided by this is the sag allowed under all load with creep,
   *     0 to 360; 0 takes 120 with 180, 180 with 240 and 240 with 360, else it is 60 at least
   * @param notch seat-cut depth, square to the rafter's edge, 0 in to 8 in
   * @param endDistance from the seat to the lower end of the rafter, 0 in to 240 in
   * @param rise tan θ, 1 in 12 to 24 in 12; 3 gives the greatest thrust that rafters without a
   *     ridge beam have
   * @param tieHeight H_C of the rafter ties above the plate, 0 in to 120 in
   * @param braceSpacing between the battens or braces that hold the upper edge while the deck is
   *     off, 0 in to 600 in; 0 if nothing does
   * @param deckOffLive what people and materials weigh while the deck is off, 1 psf to 100 psf
   * @return ten ratios with the deck on, whether all are at most 1, which is greatest, the longest
   *     span in feet; two ratios with the deck off, whether both are at most 1, the greatest
   *     distance between braces in inches; the thrust in pounds; who decides before any repair
   * @throws RefusedException if a number lies outside its range, the value set does not hold the
   *     wood, the stock is ripped, the notch goes through, or the ties stand above the lower third
   * @see "NDS 2018 chapters 3 and 4, secondary source; notches, creep, the stability equation and
   *     temperature from memory; IRC 2021 Table R802.4.1 for the tie's height, secondary source"
   */
  @LibraryFunction
  public static RafterScreening rafterScreening(
      @Column("species") OneOf<Species> species,
      @Column("grade") OneOf<Grade> grade,
      @Column("size") OneOf<LumberSize> size,
      @Column("spacing_in") Figure<Length> spacing,
      @Column("roof_live_psf") Figure<Pressure> roofLive,
      @Column("snow_psf") Figure<Pressure> snow,
      @Column("dead_psf") Figure<Pressure> dead,
      @Column("deflection_limit") Figure<Ratio> deflectionLimit,
      @Column("value_set") OneOf<ValueSet> valueSet,
      @Column("span_ft") Figure<Length> span,
      @Column(value = "bearing_in", preset = "1.5") Figure<Length> bearingLength,
      @Column(value = "stock", preset = "dressed") OneOf<Stock> stock,
      @Column(value = "thickness_in", preset = "0") Figure<Length> thickness,
      @Column(value = "depth_in", preset = "0") Figure<Length> depth,
      @Column(value = "moisture", preset = "dry") OneOf<ServiceMoisture> moisture,
      @Column(value = "temperature_f", preset = "70") Figure<Ratio> temperature,
      @Column(value = "incised", preset = "no") OneOf<YesNo> incised,
      @Column(value = "seasoned", preset = "no") OneOf<YesNo> seasoned,
      @Column(value = "total_deflection_limit", preset = "0") Figure<Ratio> totalDeflectionLimit,
      @Column(value = "notch_in", preset = "0") Figure<Length> notch,
      @Column(value = "end_distance_in", preset = "0") Figure<Length> endDistance,
      @Column(value = "rise_in_12", preset = "3") Figure<Ratio> rise,
      @Column(value = "tie_height_in", preset = "0") Figure<Length> tieHeight,
      @Column(value = "brace_spacing_in", preset = "0") Figure<Length> braceSpacing,
      @Column(value = "deck_off_live_psf", preset = "20") Figure<Pressure> deckOffLive) {
    var nominal = size.choice().argument("size");
    var kind = stock.choice().argument("stock");
    var damp = moisture.choice().argument("moisture");
    var s = RepetitiveMember.spacing(spacing);
    var loads = new RafterLoads(s, roofLive, snow, dead);
    var section = StockSection.of(nominal, kind, thickness, depth);
    var wood =
        new AdjustedWood(
            new LumberValues(species, grade, nominal, valueSet), damp, temperature, incised);
    var inches =
        span.within(
                "span_ft", Units.FOOT, Limits.between(1, 40, "clear, on the horizontal projection"))
            .as("span_in", Units.INCH)
            .symbol("L");
    var seat = BearingSeat.length(bearingLength);
    var cut = new SeatCut(notch, section);
    var tie = new RafterTie(inches, rise, tieHeight);

    var factor = tie.spanFactor().symbol("f");
    var counted = inches.dividedBy(factor).as("counted_span_in", Units.INCH).symbol("(L/f)");
    var fb =
        wood.bending
            .times(RepetitiveMember.factor(s))
            .as("repetitive_bending_psi", Units.PSI, RepetitiveMember.NDS_2018.at("4.3.9"))
            .symbol("F_b'");
    var fcPerp =
        wood.bearing
            .times(BearingSeat.areaFactor(seat, BearingSeat.endDistance(endDistance)))
            .as("bearing_psi", Units.PSI, RepetitiveMember.NDS_2018.at("Table 4.3.1"))
            .symbol("F_c⊥'");
    var loadedDry =
        Choice.choose(kind.is(Stock.GREEN), YesNo.NO, seasoned.choice().argument("seasoned"))
            .as("loaded_dry");
    Condition isSeasoned = Condition.all(loadedDry.is(YesNo.YES), damp.is(ServiceMoisture.DRY));
    var sag =
        new RafterSag(
            wood.modulus,
            section.secondMoment(),
            loads,
            isSeasoned,
            deflectionLimit,
            totalDeflectionLimit);

    List<Check> bending =
        loads.cases().stream()
            .map(each -> each.bending(fb, section.sectionModulus(), counted))
            .toList();
    List<Check> shear =
        loads.cases().stream().map(each -> each.shear(wood.shear, cut, inches)).toList();
    var passingSag = sag.underPassingLoad(counted);
    var totalSag = sag.underAllLoad(counted);
    var bearing = bearing(loads, inches, section, seat, fcPerp);
    var governing =
        Governing.of(
            List.of(
                new Named(RafterLimit.BENDING, greatest("bending", bending)),
                new Named(RafterLimit.SHEAR, greatest("shear", shear)),
                new Named(RafterLimit.DEFLECTION, passingSag.ratio()),
                new Named(RafterLimit.TOTAL_DEFLECTION, totalSag.ratio()),
                new Named(RafterLimit.BEARING, bearing.ratio()),
                new Named(RafterLimit.NOTCH, cut.check.ratio())));

    var lasting = loads.greatestLasting;
    var bent =
        SimpleSpan.spanByBending(fb, section.sectionModulus(), lasting)
            .as("bending_span_in", Units.INCH, SimpleSpan.STATICS);
    var sheared =
        SimpleSpan.spanByShear(cut.shearAllowed(wood.shear), cut.area, lasting)
            .as("shear_span_in", Units.INCH, SimpleSpan.STATICS);
    var borne =
        SimpleSpan.spanByBearing(fcPerp, section.thickness(), seat, loads.greatest)
            .as("bearing_span_in", Units.INCH, SimpleSpan.STATICS);
    var tied = factor.times(bent.min(sag.longest())).as("tied_span_in", Units.INCH);
    var unnotched = tied.min(sheared).min(borne).as("passing_span_in", Units.INCH);
    var longest =
        Figure.choose(cut.check.ok(), unnotched, NO_SPAN)
            .as("longest_span_ft", Units.FOOT, SimpleSpan.STATICS);

    var off =
        new DeckOff(
            wood,
            section,
            counted,
            tie.alongTheSlope(),
            s,
            loads.deadLoad,
            braceSpacing,
            deckOffLive);
    var ok = governing.isWithin().as("ok");
    return new RafterScreening(
        bending.get(0),
        bending.get(1),
        bending.get(2),
        shear.get(0),
        shear.get(1),
        shear.get(2),
        passingSag,
        totalSag,
        bearing,
        cut.check,
        ok,
        governing.limit(),
        longest,
        off.bending,
        off.slenderness,
        Condition.all(off.bending.ok(), off.slenderness.ok()).as("deck_off_ok"),
        off.longestUnbraced,
        tie.thrust(loads.greatest),
        RepairStops.byStrength(ok.is(YesNo.YES)));
  }

  private static Check bearing(
      RafterLoads loads,
      Figure<Length> span,
      RafterSection section,
      Figure<Length> seat,
      Figure<Stress> allowed) {
    var stress =
        SimpleSpan.reaction(loads.greatest, span)
            .dividedBy(section.thickness().times(seat))
            .as("bearing_stress_psi", Units.PSI, RepetitiveMember.NDS_2018.at("3.10.2"));
    return Check.of("bearing at the plate", "bearing_ratio", stress, allowed);
  }

  private static Figure<Ratio> greatest(String what, List<Check> checks) {
    return checks
        .get(0)
        .ratio()
        .max(checks.get(1).ratio())
        .max(checks.get(2).ratio())
        .as("greatest_" + what + "_ratio", Units.RATIO);
  }
}

package sheathwright.framing.rafter;

import java.util.List;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Narrowed;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.Governing.Named;
import sheathwright.framing.stop.RepairStops;
import sheathwright.loads.RoofLoads;
import sheathwright.wood.AdjustedWood;
import sheathwright.wood.Moisture;
import sheathwright.wood.RafterSection;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.SimpleSpan;
import sheathwright.wood.Stock;

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
   * notch   = as it is known, or l_b sin θ if that is more and nobody measured it
   * shear   = (3 V ÷ 2 b d_n) (d ÷ d_n)² ÷ (F_v' C_D)
   * sag     = 5 w_live (L ÷ f)⁴ ÷ 384 E' I, with creep under w_live + K_cr w_dead, K_cr 1.5 if seasoned, else 2
   * bearing = (w L ÷ 2 b l_b) ÷ F_c⊥'              notch = notch ÷ (d ÷ 4)
   * deck off: bending against F_b* C_L without C_r, C_D 1.25, and R_B against 50, under the rafter
   *     itself and what hangs from it, with an even load, or with stacks and one person: P L/f ÷ 4
   * longest span = where the first of the checks with the deck on reaches 1; 0 if the notch is too deep
   * thrust  = w L ÷ (2 tan θ) ÷ (1 − H_C ÷ H_R)
   * </pre>
   *
   * <p>L is the longest span between supports: a strut counts if somebody has seen it stand on a
   * bearing wall, and it takes nothing from the thrust. At a slope of 3 in 12 and less the sag
   * under live load is held to L/240 at least; below 3 that is no rafter as the code means it, and
   * {@code ridge_stop} asks for a beam.
   *
   * <p>Does not cover decay, splits, cuts, spread walls, ripped stock, trusses, overhangs, wind,
   * unbalanced or drifted snow, stacks on one spot, two people on one rafter, the nails of the heel
   * joint, or whether the braces hold. A plank over three rafters is taken to leave half of a
   * person to the one below: it lies flat, reaches over all three, and is at least as stiff as a
   * 2x10. Where a rafter is damaged or a ratio passes 1, stop: a licensed engineer decides before
   * any repair. The longest span keeps the ties at the same part of the height and leaves the time
   * with the deck off aside. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * rafterScreening(OldRafter.of(Member.of(Lumber.of(DOUGLAS_FIR_LARCH, NO_2, SIZE_2X8, NDS2018)), in(16), RoofTriangle.span(ft(12)).rise(pitch(4))).seasoned(YES), Birdsmouth.of(Seat.of(in(1.5))), RoofLoads.dead(psf(10)).roofLive(psf(20)).snow(psf(30)), DeckOff.braceSpacing(in(48)), SagLimits.live(number(180)).total(number(120))).governs() // bending
   * rafterScreening(OldRafter.of(Member.of(Lumber.of(SPRUCE_PINE_FIR, NO_2, SIZE_2X6, NDS2018)), in(16), RoofTriangle.span(ft(12)).rise(pitch(4))).seasoned(YES), Birdsmouth.of(Seat.of(in(1.5))), RoofLoads.dead(psf(10)).roofLive(psf(20)).snow(psf(30)), DeckOff.braceSpacing(in(0)).hung(psf(0)), SagLimits.live(number(180)).total(number(120))).deckOffWay() // few-sheets-or-braces
   * }</pre>
   *
   * @param rafter as it stands
   * @param seat of the rafter on the plate
   * @param loads on the roof; roof live load at most 100 psf and at least 1 psf, dead load at most
   *     100 psf; while the deck is off the rafters bear themselves and what hangs from them
   * @param deckOff how the rafter stands while the deck is off
   * @param limits of the sag that is allowed
   * @return ten ratios with the deck on, whether all are at most 1, which is greatest, the longest
   *     span in feet; two ratios with the deck off, whether both are at most 1, the dead load that
   *     stays in psf, the greatest distance in inches between braces, or between nailed sheets, and
   *     that under planks, and what a crew does; the thrust in pounds; who decides before any
   *     repair
   * @throws RefusedException if a number lies outside its range, the value set does not hold the
   *     wood, the stock is ripped, the notch goes through, or the ties stand above the lower third
   * @see "NDS 2018 chapters 3 and 4, secondary source; notches, creep, the stability equation and
   *     temperature from memory; IRC 2021 Table R802.4.1 for the tie's height, secondary source;
   *     framing of 35 pcf, a person of 250 lb and half of it under planks common practice, no
   *     source"
   */
  @LibraryFunction(words = {"existing rafter", "overload", "engineer", "strength"})
  public static RafterScreening rafterScreening(
      OldRafter rafter,
      Birdsmouth seat,
      @Narrowed(
              column = "dead_psf",
              least = 0,
              most = RafterLoads.MOST_DEAD,
              rule = RafterLoads.DEAD_RULE)
          @Narrowed(
              column = "roof_live_psf",
              least = RafterLoads.LEAST_ROOF_LIVE,
              most = RafterLoads.MOST_ROOF_LIVE,
              rule = RafterLoads.ROOF_LIVE_RULE)
          RoofLoads loads,
      DeckOff deckOff,
      SagLimits limits) {
    var spacing = rafter.spacing();
    var on = new RafterLoads(spacing, loads);
    var section = rafter.member().section();
    var wood = new AdjustedWood(rafter.member());
    var whole = rafter.triangle().span().as("span_in", Units.INCH);
    var inches = rafter.strut().longest(whole).symbol("L");
    var bed = seat.seat().bearing();
    var tie = new RafterTie(whole, rafter.triangle());
    var cut = new SeatCut(seat.cut(tie), section);

    var factor = tie.spanFactor().symbol("f");
    var counted = inches.dividedBy(factor).as("counted_span_in", Units.INCH).symbol("(L/f)");
    var fb =
        wood.bending
            .times(RepetitiveMember.factor(spacing))
            .as("repetitive_bending_psi", Units.PSI, RepetitiveMember.NDS_2018.at("4.3.9"))
            .symbol("F_b'");
    var fcPerp =
        wood.bearing
            .times(seat.seat().areaFactor())
            .as("bearing_psi", Units.PSI, RepetitiveMember.NDS_2018.at("Table 4.3.1"))
            .symbol("F_c⊥'");
    var sag =
        new RafterSag(
            wood.modulus,
            section.secondMoment(),
            on,
            rafter.triangle().rise(),
            isSeasoned(rafter),
            limits);

    List<Check> bending =
        on.cases().stream()
            .map(each -> each.bending(fb, section.sectionModulus(), counted))
            .toList();
    List<Check> shear =
        on.cases().stream().map(each -> each.shear(wood.shear, cut, inches)).toList();
    var passingSag = sag.underPassingLoad(counted);
    var totalSag = sag.underAllLoad(counted);
    var bearing = bearing(on, inches, section, bed, fcPerp);
    var governing =
        Governing.of(
            List.of(
                new Named(RafterLimit.BENDING, greatest("bending", bending)),
                new Named(RafterLimit.SHEAR, greatest("shear", shear)),
                new Named(RafterLimit.DEFLECTION, passingSag.ratio()),
                new Named(RafterLimit.TOTAL_DEFLECTION, totalSag.ratio()),
                new Named(RafterLimit.BEARING, bearing.ratio()),
                new Named(RafterLimit.NOTCH, cut.check.ratio())));

    var lasting = on.greatestLasting;
    var bent =
        SimpleSpan.spanByBending(fb, section.sectionModulus(), lasting)
            .as("bending_span_in", Units.INCH, SimpleSpan.STATICS);
    var sheared =
        SimpleSpan.spanByShear(cut.shearAllowed(wood.shear), cut.area, lasting)
            .as("shear_span_in", Units.INCH, SimpleSpan.STATICS);
    var borne =
        SimpleSpan.spanByBearing(fcPerp, section.thickness(), bed, on.greatest)
            .as("bearing_span_in", Units.INCH, SimpleSpan.STATICS);
    var tied = factor.times(bent.min(sag.longest())).as("tied_span_in", Units.INCH);
    var unnotched = tied.min(sheared).min(borne).as("passing_span_in", Units.INCH);
    var longest =
        Figure.choose(cut.check.ok(), unnotched, NO_SPAN)
            .as("longest_span_ft", Units.FOOT, SimpleSpan.STATICS);

    var off = new DeckOffChecks(wood, section, counted, tie, spacing, deckOff.hungIn(loads.dead()));
    var offOk = off.ok();
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
        offOk,
        off.dead,
        off.longestUnbraced,
        off.longestUnderPlanks,
        off.way(offOk),
        tie.thrust(on.greatest),
        RepairStops.byStrength(ok.is(YesNo.YES)));
  }

  /** Whether it was dry when it was first loaded and has stayed so. */
  private static Condition isSeasoned(OldRafter rafter) {
    var loadedDry =
        Choice.choose(
                rafter.member().actual().stock().choice().is(Stock.GREEN),
                YesNo.NO,
                rafter.seasoned())
            .as("loaded_dry");
    return Condition.all(
        loadedDry.is(YesNo.YES),
        rafter.member().service().moisture().choice().is(Moisture.STAYS_DRY));
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

package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.framing.sister.BendingValue;
import sheathwright.framing.sister.LineLoads;
import sheathwright.framing.sister.PlySection;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.wood.LumberSize;
import sheathwright.wood.SimpleSpan;

/** Sisters over a break, a cut or rot: the sister alone bridges it. */
public final class SisterSplices {

  private static final Source SPLICE =
      Source.derived("the old rafter carries no moment and no shear at the break");
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Nails> LEAST_GROUP =
      Figure.constant("least_group_nails", 3, Units.NAIL, Source.COMMON_PRACTICE).symbol("3 nails");
  private static final Figure<Force> NO_FORCE = Figure.of(0, Units.POUND);

  private SisterSplices() {}

  /**
   * What a sister over a broken, cut or rotten place has to carry, with two groups of nails on each
   * side of it: the forces on the groups, the nails in each, and how long the sister must be.
   *
   * <pre>
   * M_b = w x (L − x) ÷ 2          V_b = w (L ÷ 2 − x), without its sign
   * near = (M_b + c V_b) ÷ s + V_b          far = (M_b + c V_b) ÷ s
   * nails = ⌈force ÷ Z'⌉, 3 at least in two rows          length = 2 (c + s + end distance)
   * bending = (M_b + c V_b) ÷ (F_b' S) of the sister alone
   * </pre>
   *
   * <p>Does not cover splitting, damage at a support, where the sister must stand on the plate
   * itself, temporary support while the rafter is cut, or trusses, which nobody may cut or splice
   * without their engineer. The forces are those of the worse side of the break; both sides are
   * nailed alike. Screening only: local code and a licensed engineer decide, and with a broken
   * rafter the engineer always decides before any repair.
   *
   * <pre>{@code
   * sisterSplice(SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)), Splice.at(ft(6.5)).near(in(0)), GroupNailing.arm(in(24.05)).lateral(lb(135.7)), SIZE_2X8, BendingValue.of(psi(1428))).near() // 843.2 lb
   * sisterSplice(SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)), Splice.at(ft(6.5)).near(in(0)), GroupNailing.arm(in(24.05)).lateral(lb(135.7)), SIZE_2X8, BendingValue.of(psi(1428))).nearNails() // 7 nails
   * sisterSplice(SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)), Splice.at(ft(6.5)).near(in(0)), GroupNailing.arm(in(24.05)).lateral(lb(135.7)), SIZE_2X8, BendingValue.of(psi(1428))).decision() // STOP: a licensed engineer decides before any repair
   * }</pre>
   *
   * @param load on the span
   * @param splice where the break is, and how sisters lie over it
   * @param nails in two groups on each side of it
   * @param sisterSize nominal size of each sister, taken at its dry dressed size
   * @param bending that each sister's wood is allowed
   * @return moment in inch-pounds and shear in pounds across the break in all; forces in pounds and
   *     nails of a near and a far group in each sister; length in feet; the sister's ratio, which
   *     may be 1 at most; yes or no; who decides
   * @throws RefusedException if a number lies outside its range, or the sister would reach past a
   *     support
   * @see "derived: statics of a splice"
   */
  @LibraryFunction(words = {"cracked rafter", "scab", "splint"})
  public static SisterSplice sisterSplice(
      SpanLoad load,
      Splice splice,
      GroupNailing nails,
      @Column("sister_size") OneOf<LumberSize> sisterSize,
      @Column(prefix = "sister_") BendingValue bending) {
    var loads = new LineLoads(load);
    var x = splice.place().as("break_in", Units.INCH).symbol("x");
    var c = splice.near();
    var s = nails.arm();
    var count = splice.sisters();
    var can =
        PlySection.dressed(PlySection.SISTER, sisterSize.choice().argument("sister_size"))
            .capacity(bending);
    var z = nails.lateral();

    var half = c.plus(s).plus(nails.endDistance()).as("half_length_in", Units.INCH, SPLICE);
    var fits = Condition.all(half.isAtMost(x), half.isAtMost(loads.span().minus(x).in(Units.INCH)));
    var place =
        x.onlyIf(
                fits,
                "the sister, centered on the break, would run past a support; there it must bear on"
                    + " the plate itself, and a licensed engineer decides: shorten near_in or arm_in, or"
                    + " look at break_ft")
            .as("break_within_in", Units.INCH)
            .symbol("x");
    var moment =
        loads.momentAt(place, "break").as("moment_in_lb", Units.INCH_POUND, SPLICE).symbol("M_b");
    var signed =
        loads
            .total()
            .times(loads.span().dividedBy(TWO).minus(place))
            .as("signed_shear_lb", Units.POUND, SimpleSpan.STATICS);
    var shear =
        signed.max(NO_FORCE.minus(signed)).as("shear_lb", Units.POUND, SPLICE).symbol("V_b");

    var worst =
        moment
            .plus(c.times(shear))
            .dividedBy(count)
            .as("sister_moment_in_lb", Units.INCH_POUND, SPLICE);
    var far = worst.dividedBy(s).as("far_lb", Units.POUND, SPLICE);
    var nearForce = far.plus(shear.dividedBy(count)).as("near_lb", Units.POUND, SPLICE);
    var sister = Check.of("bending of the sister over the break", "sister_ratio", worst, can);
    return new SisterSplice(
        moment,
        shear,
        nearForce,
        far,
        nails(nearForce, z, "near_nails", SPLICE),
        nails(far, z, "far_nails", SPLICE),
        TWO.times(half).as("least_length_ft", Units.FOOT, SPLICE),
        sister,
        sister.ok().as("ok"),
        Decision.STOP_ENGINEER.choice().as("decision"));
  }

  /** Whole nails for a force, enough to be a group: one nail would be a hinge. */
  static Figure<Nails> nails(Figure<Force> force, Figure<Force> each, String name, Source source) {
    return force
        .dividedBy(each)
        .in(Units.RATIO)
        .roundedUp()
        .counting(Units.NAIL)
        .max(LEAST_GROUP)
        .as(name, Units.NAIL, source);
  }
}

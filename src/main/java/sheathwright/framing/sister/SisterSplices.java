package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
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
   * sisterSplice(ft(13), ft(6.5), in(24), psf(30), psf(10), in(0), in(24.05), in(3), number(1), SIZE_2X8, psi(1428), lb(135.7)).near() // 843.2 lb
   * sisterSplice(ft(13), ft(6.5), in(24), psf(30), psf(10), in(0), in(24.05), in(3), number(1), SIZE_2X8, psi(1428), lb(135.7)).nearNails() // 7 nails
   * sisterSplice(ft(13), ft(6.5), in(24), psf(30), psf(10), in(0), in(24.05), in(3), number(1), SIZE_2X8, psi(1428), lb(135.7)).decision() // STOP: a licensed engineer decides before any repair
   * }</pre>
   *
   * @param span clear span on the horizontal projection, 1 ft to 40 ft
   * @param damage from the nearer or either support to the middle of the break, 0.25 ft to 39.75 ft
   * @param spacing center to center of the rafters, 4 in to 48 in
   * @param live roof live load or snow on the horizontal projection, 1 psf to 300 psf
   * @param dead dead load on the horizontal projection, 0 psf to 100 psf
   * @param near c, in sound wood, from the break to the middle of the near group, 0 in to 48 in
   * @param arm s, from the middle of the near group to the middle of the far one, 3 in to 120 in
   * @param endDistance from the middle of the far group to the sister's end, 0 in to 24 in
   * @param sisters on one side or on both, each with its own nails: 1 or 2
   * @param sisterSize nominal size of each sister, taken at its dry dressed size
   * @param sisterBending F_b' of the sister, adjusted, 50 psi to 10000 psi
   * @param lateral Z' of one nail, adjusted, 1 lb to 5000 lb
   * @return moment in inch-pounds and shear in pounds across the break in all; forces in pounds and
   *     nails of a near and a far group in each sister; length in feet; the sister's ratio, which
   *     may be 1 at most; yes or no; who decides
   * @throws RefusedException if a number lies outside its range, or the sister would reach past a
   *     support
   * @see "derived: statics of a splice"
   */
  @LibraryFunction
  public static SisterSplice sisterSplice(
      @Column("span_ft") Figure<Length> span,
      @Column("break_ft") Figure<Length> damage,
      @Column("spacing_in") Figure<Length> spacing,
      @Column("live_psf") Figure<Pressure> live,
      @Column("dead_psf") Figure<Pressure> dead,
      @Column("near_in") Figure<Length> near,
      @Column("arm_in") Figure<Length> arm,
      @Column(value = "end_distance_in", preset = "3") Figure<Length> endDistance,
      @Column(value = "sisters", preset = "1") Figure<Ratio> sisters,
      @Column("sister_size") OneOf<LumberSize> sisterSize,
      @Column("sister_bending_psi") Figure<Stress> sisterBending,
      @Column("lateral_lb") Figure<Force> lateral) {
    var load = new SpanLoad(spacing, span, live, dead);
    var x =
        damage
            .within(
                "break_ft",
                Units.FOOT,
                Limits.between(0.25, 39.75, "from a support to the middle of the break"))
            .as("break_in", Units.INCH)
            .symbol("x");
    var c =
        near.within("near_in", Units.INCH, Limits.between(0, 48, "12 leaves room for rot"))
            .symbol("c");
    var s = SisterArguments.arm(arm);
    var end = SisterArguments.endDistance(endDistance);
    var count =
        sisters
            .within("sisters", Units.RATIO, Limits.either(1, 2, "one side or both"))
            .symbol("sisters");
    var can =
        Ply.dressed("sister", sisterSize.choice().argument("sister_size"))
            .capacity(SisterArguments.bending("sister", sisterBending));
    var z = SisterArguments.lateral(lateral);

    var half = c.plus(s).plus(end).as("half_length_in", Units.INCH, SPLICE);
    var fits = Condition.all(half.isAtMost(x), half.isAtMost(load.span.minus(x).in(Units.INCH)));
    var place =
        x.onlyIf(
                fits,
                "the sister, centered on the break, would reach past a support; there it must stand on"
                    + " the plate itself, and a licensed engineer decides: shorten near_in or arm_in, or"
                    + " look at break_ft")
            .as("break_within_in", Units.INCH)
            .symbol("x");
    var moment =
        load.momentAt(place, "break").as("moment_in_lb", Units.INCH_POUND, SPLICE).symbol("M_b");
    var signed =
        load.total
            .times(load.span.dividedBy(TWO).minus(place))
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

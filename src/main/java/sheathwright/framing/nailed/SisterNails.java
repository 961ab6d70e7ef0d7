package sheathwright.framing.nailed;

import sheathwright.catalog.Assumed;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.sister.LineLoads;
import sheathwright.framing.sister.SpanLoad;

/** The nails that bring a rafter's load over into its sister. */
public final class SisterNails {

  private static final Source TRANSFER =
      Source.derived("load that passes from the rafter to the sister, evenly along both");
  private static final Source BUILT_UP =
      Source.fromMemory("IRC Table R602.3(1), built-up pieces, the closer of 12 in and 16 in");
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> GIVEN_BACK =
      Figure.constant(
              "given_back_allowance",
              1.25,
              Units.RATIO,
              Source.derived(
                  "two-beam model with nails to 20000 lb/in: 1.08 times half the transfer"))
          .symbol("1.25");
  private static final Figure<Length> COMMON_SPACING =
      Figure.constant("built_up_spacing_in", 12, Units.INCH, BUILT_UP).symbol("12 in");
  private static final Figure<Nails> COMMON_END =
      Figure.constant("built_up_end_nails", 2, Units.NAIL, BUILT_UP).symbol("2 nails");

  private SisterNails() {}

  /**
   * What the nails along a full-length sister carry, how far apart they may stand, and how many its
   * ends need.
   *
   * <pre>
   * transfer = a_sister w L            each nail = a_sister w s
   * greatest spacing = Z' ÷ (a_sister w)
   * use = the lesser of that and 12 in, staggered in two rows
   * end nails = ⌈1.25 transfer ÷ 2 Z'⌉ where the sister does not bear, but 2 at least
   * </pre>
   *
   * <p>Does not cover sisters that end short of the supports (see {@code part_sister}), sisters
   * over a break (see {@code sister_splice}), edge distances, or splitting. No shear flows
   * lengthwise between pieces side by side, so that the formula for stacked pieces has no place
   * here. A sister that does not bear gives back at its ends what it has gathered: those nails
   * stand within 12 in to 16 in of each end. Screening only: local code and a licensed engineer
   * decide, and where the old rafter's own ratio passes 1 the engineer decides before any repair.
   *
   * <pre>{@code
   * nailsAlongSister(number(0.5), SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)), in(9.23), lb(135.7), YES).each() // 30.8 lb
   * nailsAlongSister(number(0.5), SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)), in(9.23), lb(135.7), YES).transfer() // 520 lb
   * }</pre>
   *
   * @param sisterShare the sister's part of the load, 0 to 1
   * @param load on the span
   * @param nailSpacing from nail to nail along the sister, both rows together, 1 in to 48 in
   * @param lateral Z' of one nail, adjusted, 1 lb to 5000 lb
   * @param sisterBears whether the sister bears on the plates itself
   * @return pounds in all and on each nail, its ratio, which may be 1 at most; spacings in inches,
   *     the one remembered marked so; nails at each end
   * @throws RefusedException if a number lies outside its range
   * @see "derived: statics; the common least is from memory of IRC 2021 Table R602.3(1)"
   */
  @LibraryFunction(words = {"sister nailing", "nail pattern"})
  public static SisterNail nailsAlongSister(
      @Column("sister_share") Figure<Ratio> sisterShare,
      SpanLoad load,
      @Column(value = "nail_spacing_in", preset = "12") Figure<Length> nailSpacing,
      @Column("lateral_lb") Figure<Force> lateral,
      @Column("sister_bears") @Assumed("no") OneOf<YesNo> sisterBears) {
    var share =
        sisterShare
            .within("sister_share", Units.RATIO, Limits.between(0, 1, "from sister_share"))
            .symbol("a_sister");
    var loads = new LineLoads(load);
    var apart =
        nailSpacing
            .within(
                "nail_spacing_in",
                Units.INCH,
                Limits.between(1, 48, "12 is usual, staggered in two rows"))
            .symbol("s");
    var z = GroupNailing.ofOneNail(lateral);

    var moved =
        share
            .times(loads.total())
            .as("moved_lb_per_in", Units.POUND_PER_INCH, TRANSFER)
            .symbol("a_sister w");
    var transfer = moved.times(loads.span()).as("transfer_lb", Units.POUND, TRANSFER);
    var each = moved.times(apart).as("each_lb", Units.POUND, TRANSFER);
    var nail = Check.of("load per nail along the sister", "nail_ratio", each, z);

    var isLoaded = moved.isMoreThan(Figure.of(0, Units.POUND_PER_INCH));
    var movedOrOne =
        Figure.choose(isLoaded, moved, Figure.of(1, Units.POUND_PER_INCH))
            .as("moved_or_one_lb_per_in", Units.POUND_PER_INCH);
    var byStrength =
        Figure.choose(
                isLoaded,
                z.dividedBy(movedOrOne).as("strength_spacing_in", Units.INCH, TRANSFER),
                Figure.none("no limit", Units.INCH))
            .as("greatest_spacing_in", Units.INCH, TRANSFER);
    var common = COMMON_SPACING.as("common_spacing_in", Units.INCH, BUILT_UP);
    var use =
        Figure.choose(
                moved.times(common).as("at_common_lb", Units.POUND).isAtMost(z), common, byStrength)
            .as("use_spacing_in", Units.INCH, BUILT_UP);

    var givenBack =
        GIVEN_BACK
            .times(transfer)
            .dividedBy(TWO.times(z))
            .in(Units.RATIO)
            .roundedUp()
            .counting(Units.NAIL)
            .as("given_back_nails", Units.NAIL, TRANSFER);
    var endNails =
        Figure.choose(
                sisterBears.choice().argument("sister_bears").is(YesNo.YES),
                COMMON_END,
                givenBack.max(COMMON_END))
            .as("end_nails", Units.NAIL, BUILT_UP);
    return new SisterNail(transfer, each, nail, byStrength, common, use, endNails);
  }
}

package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.SimpleSpan;

/** How hard a pair of rafters pushes the walls apart. */
public final class RafterThrusts {

  private static final Figure<Nails> NO_NAILS = Figure.of(0, Units.NAIL);
  private static final Figure<Nails> LEAST_NAILS =
      Figure.constant(
              "least_heel_nails", 3, Units.NAIL, Source.fromMemory("IRC 2018, Table R602.3(1)"))
          .symbol("3");

  private RafterThrusts() {}

  /**
   * How hard a pair of like rafters pulls at the tie that keeps the walls from spreading.
   *
   * <pre>
   * H = w L ÷ (2 tan θ) ÷ (1 − H_C ÷ H_R)      H_R = L tan θ
   * </pre>
   *
   * <p>Does not cover the nails of the heel joint (see {@code heel_nails}), a ridge beam, which
   * leaves no thrust, unlike loads on the two slopes, or what the tie itself carries. Walls that
   * have spread are for a licensed engineer before any work. Screening only: local code and a
   * licensed engineer decide.
   *
   * <pre>{@code
   * rafterThrust(ft(12), pitch(4), in(16), psf(30), in(0)) // 720 lb
   * }</pre>
   *
   * @param span L of one rafter on the horizontal projection, 1 ft to 40 ft
   * @param rise tan θ, 1 in 12 to 24 in 12
   * @param spacing center to center, 4 in to 48 in
   * @param load all load on the horizontal projection, 1 psf to 400 psf
   * @param tieHeight H_C of the tie above the plate, 0 in to 120 in
   * @return pull in pounds at each pair of rafters that is tied
   * @throws RefusedException if a number lies outside its range, or the tie stands above the lower
   *     third of the roof
   * @see "derived: statics of a three-hinged frame"
   */
  @LibraryFunction(words = {"collar tie", "rafter tie", "ceiling joist", "spreading walls"})
  @Column("thrust_lb")
  public static Figure<Force> rafterThrust(
      @Column("span_ft") Figure<Length> span,
      @Column("rise_in_12") Figure<Ratio> rise,
      @Column("spacing_in") Figure<Length> spacing,
      @Column("load_psf") Figure<Pressure> load,
      @Column(value = "tie_height_in", preset = "0") Figure<Length> tieHeight) {
    var triangle = new RoofTriangle(span, rise, tieHeight);
    return new RafterTie(triangle.span().symbol("L"), triangle)
        .thrust(lineLoad(RepetitiveMember.spacing(spacing), load));
  }

  /**
   * How many nails join rafter and tie, so that the walls do not spread, and whether so many are
   * there.
   *
   * <pre>
   * H     = w L ÷ (2 tan θ) ÷ (1 − H_C ÷ H_R)
   * computed = H ÷ Z', up to a whole one, 3 at least
   * code     = printed ÷ (1 − H_C ÷ H_R), up to a whole one, for 16d common nails
   * nails    = the more of the two
   * </pre>
   *
   * <p>The code's row is that of the next flatter printed slope, wider spacing, longer roof span
   * (twice that of a rafter) and more snow; where the snow is not said, or the table ends, there is
   * none. It counts 16d common nails, whatever nail is asked about.
   *
   * <p>Does not cover splices of ceiling joists, which need as many; nails too close together or to
   * the end, which split the wood; a ridge beam, which leaves no thrust; spread walls, which are
   * for a licensed engineer before any work. The spacing is that of the pairs that are tied: 48 in
   * where every third pair of rafters 16 in apart has a tie. Nails nobody saw are no nails.
   * Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * heelNails(RoofTriangle.span(ft(12)).rise(pitch(4)), in(16), psf(30), HeelJoint.lateral(lb(138)).found(nails(5))).nails() // 6 nails
   * heelNails(RoofTriangle.span(ft(14)).rise(pitch(4)), in(16), psf(30), HeelJoint.lateral(lb(138)).snow(TO_30)).codeNails() // 8 nails
   * }</pre>
   *
   * @param triangle of one rafter and its tie
   * @param spacing of the pairs that are tied, 4 in to 48 in
   * @param load all load on the horizontal projection, 1 psf to 400 psf
   * @param joint its nails, and the snow by which the code prints them
   * @return pull in pounds at each tied pair, nails for it by statics and by the code's table, how
   *     many are missing, and whether none is
   * @throws RefusedException if a number lies outside its range, or the tie stands above the lower
   *     third of the roof
   * @see "derived: statics of a three-hinged frame; IRC 2018 Table R802.5.2, from memory; three
   *     nails at least from memory, IRC Table R602.3(1)"
   */
  @LibraryFunction
  public static HeelNails heelNails(
      RoofTriangle triangle,
      @Column("spacing_in") Figure<Length> spacing,
      @Column("load_psf") Figure<Pressure> load,
      HeelJoint joint) {
    var apart = RepetitiveMember.spacing(spacing);
    var tie = new RafterTie(triangle.span().symbol("L"), triangle);
    var pull = tie.thrust(lineLoad(apart, load)).symbol("H");
    var computed =
        pull.dividedBy(joint.lateral())
            .in(Units.RATIO)
            .roundedUp()
            .counting(Units.NAIL)
            .max(LEAST_NAILS)
            .as("computed_nails", Units.NAIL, pull.source());
    var row = new HeelRow(tie, triangle, apart, joint.snow().choice());
    var isPrinted = row.isPrinted();
    var printed = row.nails();
    var code =
        Figure.choose(isPrinted, printed, Figure.none("no row", Units.NAIL))
            .as("code_nails", Units.NAIL, HeelRow.TABLE.source());
    var more = computed.max(printed).as("more_nails", Units.NAIL);
    var needed = Figure.choose(isPrinted, more, computed).as("nails", Units.NAIL, pull.source());
    var missing = needed.minus(joint.found()).max(NO_NAILS).as("nails_missing", Units.NAIL);
    return new HeelNails(
        pull, computed, code, needed, missing, missing.isAtMost(NO_NAILS).as("ok"));
  }

  private static Figure<LineForce> lineLoad(Figure<Length> spacing, Figure<Pressure> load) {
    var q =
        load.within("load_psf", Units.PSF, Limits.between(1, 400, "dead and roof live or snow"))
            .symbol("q");
    return q.times(spacing)
        .as("load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
        .symbol("w");
  }

  /**
   * The joint that keeps a pair of rafters from pushing the walls apart.
   *
   * @param thrust at each tied pair
   * @param computed nails that hold it
   * @param codeNails that the code prints for it, if it prints any
   * @param nails the more of the two
   * @param missing of them
   * @param ok whether none is missing
   */
  public record HeelNails(
      @Column("thrust_lb") Figure<Force> thrust,
      @Column(value = "computed_nails", unit = "nail") Figure<Nails> computed,
      @Column(value = "code_nails", unit = "nail") Figure<Nails> codeNails,
      @Column(value = "nails", unit = "nail") Figure<Nails> nails,
      @Column(value = "nails_missing", unit = "nail") Figure<Nails> missing,
      @Column("ok") Choice<YesNo> ok) {}
}

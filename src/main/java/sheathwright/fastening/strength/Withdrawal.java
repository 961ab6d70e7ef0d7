package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.Nds;

/** What an inch of a nail or a screw in the side of a rafter holds. */
public final class Withdrawal {

  private static final Source SMOOTH_NAIL = Nds.COPIED.at("12.2.3");
  private static final Source OTHER_NAIL = Nds.REMEMBERED.at("12.2.3");
  private static final Source WOOD_SCREW = Nds.COPIED.at("12.2.2");
  private static final Source LAG_SCREW = Nds.COPIED.at("12.2.1");
  static final Figure<Stress> SMOOTH_PSI = psi("smooth_nail_psi", 1380, SMOOTH_NAIL);
  private static final Figure<Stress> STAINLESS_PSI = psi("stainless_nail_psi", 465, OTHER_NAIL);
  static final Figure<Stress> RING_PSI = psi("ring_nail_psi", 1800, OTHER_NAIL);
  private static final Figure<Stress> WOOD_SCREW_PSI = psi("wood_screw_psi", 2850, WOOD_SCREW);
  private static final Figure<LineForce> LAG_SCREW_CONSTANT =
      Figure.constant("lag_screw_lb_per_in", 1800, Units.POUND_PER_INCH, LAG_SCREW)
          .symbol("1800 lb/in");
  private static final Figure<Length> INCH = Figure.of(1, Units.INCH);
  static final Figure<Ratio> SMOOTH_EXPONENT =
      Nds.number("smooth_nail_exponent", 2.5, "2.5", SMOOTH_NAIL);
  private static final Figure<Ratio> STAINLESS_EXPONENT =
      Nds.number("stainless_nail_exponent", 1.5, "1.5", OTHER_NAIL);
  private static final Figure<Ratio> LAG_GRAVITY_EXPONENT =
      Nds.number("lag_screw_gravity_exponent", 1.5, "1.5", LAG_SCREW);
  private static final Figure<Ratio> LAG_DIAMETER_EXPONENT =
      Nds.number("lag_screw_diameter_exponent", 0.75, "0.75", LAG_SCREW);

  private Withdrawal() {}

  private static Figure<Stress> psi(String name, double number, Source source) {
    return Figure.constant(name, number, Units.PSI, source).symbol((int) number + " psi");
  }

  /**
   * What each inch of a nail in the side of a rafter holds against being pulled straight out.
   *
   * <pre>
   * W = 1380 psi × G^2.5 × D   smooth, bright or galvanized
   * W = 1800 psi × G² × D      ring shank, each inch of its ringed part
   * W = 465 psi × G^1.5 × D    smooth stainless
   * </pre>
   *
   * <p>Does not cover adjustment factors and penetration (see {@code nail_resistance}), end grain,
   * where nothing may be counted, toe-nails, split or decayed rafters, where nothing holds, or a
   * panel as the holding wood. Screening only: local code and a licensed engineer decide.
   *
   * <p>The ring-shank and stainless numbers are from memory; both equations came with the 2018
   * edition, the smooth one is older.
   *
   * <pre>{@code
   * nailWithdrawal(number(0.42), in(0.131), SMOOTH) // 20.67 lb/in
   * nailWithdrawal(number(0.42), in(0.113), RING) // 35.88 lb/in
   * }</pre>
   *
   * @param specificGravity G of the rafter, 0.2 to 0.8
   * @param diameter D of the shank, 0.05 in to 0.24 in
   * @param shank smooth, ring or stainless
   * @return reference value in pounds for each inch of penetration
   * @throws RefusedException if a number lies outside its range
   * @see "NDS 2018 section 12.2.3: the smooth nail from a secondary source, ring shank and
   *     stainless from memory"
   */
  @LibraryFunction(words = {"pull out"})
  @Column("withdrawal_lb_per_in")
  public static Figure<LineForce> nailWithdrawal(
      @Column("specific_gravity") Figure<Ratio> specificGravity,
      @Column("diameter_in") Figure<Length> diameter,
      @Column("shank") OneOf<Shank> shank) {
    Choice<Shank> kind = shank.choice().argument("shank");
    var g = Nds.gravity("specific_gravity", specificGravity).symbol("G");
    var d = Nds.nailDiameter(diameter);

    var smooth =
        SMOOTH_PSI
            .times(g.power(SMOOTH_EXPONENT))
            .times(d)
            .as("smooth_nail_lb_per_in", Units.POUND_PER_INCH, SMOOTH_NAIL);
    var stainless =
        STAINLESS_PSI
            .times(g.power(STAINLESS_EXPONENT))
            .times(d)
            .as("stainless_nail_lb_per_in", Units.POUND_PER_INCH, OTHER_NAIL);
    var ring =
        RING_PSI
            .times(g.squared())
            .times(d)
            .as("ring_nail_lb_per_in", Units.POUND_PER_INCH, OTHER_NAIL);
    var withoutRings =
        Figure.choose(kind.is(Shank.STAINLESS), stainless, smooth)
            .as("nail_without_rings_lb_per_in", Units.POUND_PER_INCH);
    return Figure.choose(kind.is(Shank.RING), ring, withoutRings)
        .as("withdrawal_lb_per_in", Units.POUND_PER_INCH, OTHER_NAIL);
  }

  /**
   * What each inch of a wood screw's thread in the side of a rafter holds against being pulled
   * straight out.
   *
   * <pre>
   * W = 2850 psi × G² × D
   * </pre>
   *
   * <p>Does not cover adjustment factors and thread length (see {@code screw_resistance}), the
   * screw's own strength, end grain, or a panel alone (see {@code panel_screw_withdrawal}).
   * Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * screwWithdrawal(number(0.5), in(0.164)) // 116.85 lb/in
   * screwWithdrawal(number(0.42), in(0.19)) // 95.52 lb/in
   * }</pre>
   *
   * @param specificGravity G of the holding wood, 0.2 to 0.8
   * @param diameter D over the thread, 0.05 in to 0.5 in
   * @return reference value in pounds for each inch of thread
   * @throws RefusedException if a number lies outside its range
   * @see "NDS 2018 section 12.2.2, secondary source"
   */
  @LibraryFunction
  @Column("withdrawal_lb_per_in")
  public static Figure<LineForce> screwWithdrawal(
      @Column("specific_gravity") Figure<Ratio> specificGravity,
      @Column("diameter_in") Figure<Length> diameter) {
    var g = Nds.gravity("specific_gravity", specificGravity).symbol("G");
    var d = Columns.of(PanelScrew.class).let("diameter", diameter);
    return WOOD_SCREW_PSI
        .times(g.squared())
        .times(d)
        .as("withdrawal_lb_per_in", Units.POUND_PER_INCH, WOOD_SCREW);
  }

  /**
   * What each inch of a lag screw's thread in the side of a rafter holds against being pulled
   * straight out.
   *
   * <pre>
   * W = 1800 lb/in × G^1.5 × (D ÷ 1 in)^0.75
   * </pre>
   *
   * <p>Does not cover adjustment factors, the tip and the thread length (see {@code
   * screw_resistance}), the screw's own strength, lead holes, or end grain. Screening only: local
   * code and a licensed engineer decide.
   *
   * <pre>{@code
   * lagWithdrawal(number(0.5), in(0.5)) // 378.4 lb/in
   * }</pre>
   *
   * @param specificGravity G of the holding wood, 0.2 to 0.8
   * @param diameter D of the shank, 0.1 in to 1.25 in
   * @return reference value in pounds for each inch of thread, the tip left out
   * @throws RefusedException if a number lies outside its range
   * @see "NDS 2018 section 12.2.1, secondary source; Table 12.2A, whose scanned page was read, is
   *     reproduced"
   */
  @LibraryFunction
  @Column("withdrawal_lb_per_in")
  public static Figure<LineForce> lagWithdrawal(
      @Column("specific_gravity") Figure<Ratio> specificGravity,
      @Column("diameter_in") Figure<Length> diameter) {
    var g = Nds.gravity("specific_gravity", specificGravity).symbol("G");
    var d =
        diameter
            .within("diameter_in", Units.INCH, Limits.between(0.1, 1.25, "1/4 to 1/2 are usual"))
            .symbol("D");
    return LAG_SCREW_CONSTANT
        .times(g.power(LAG_GRAVITY_EXPONENT))
        .times(d.dividedBy(INCH).in(Units.RATIO).power(LAG_DIAMETER_EXPONENT))
        .as("withdrawal_lb_per_in", Units.POUND_PER_INCH, LAG_SCREW);
  }
}

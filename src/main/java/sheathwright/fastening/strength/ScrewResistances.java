package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.Nds;
import sheathwright.wood.WoodMoisture;
import sheathwright.wood.WoodWarmth;

/** What one screw holds against the wind, in a rafter or in the panel alone. */
public final class ScrewResistances {

  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);

  private ScrewResistances() {}

  /**
   * What one wood screw or lag screw into a rafter holds against being pulled straight out.
   *
   * <pre>
   * thread     = the lesser of (length − thickness − shim) and the screw's thread, less its tip
   * resistance = W × thread × C_D × C_M × C_t
   * C_t = 1, 0.8 and 0.7 to 100, 125 and 150 degrees; in wood that is wet in service 1, 0.7 and 0.5
   * </pre>
   *
   * <p>Does not cover the head's pull-through, the screw's own strength, lead holes, re-used holes,
   * end grain, or makers' screws, whose maker states their values. Screening only: local code and a
   * licensed engineer decide.
   *
   * <p>Of a lag screw the tapered tip does not count; of a wood screw it does, so its tip is 0.
   *
   * <pre>{@code
   * screwResistance(LAG_SCREW, in(0.5), in(4), in(2.5), in("5/16"), number(0.55), in(1.5), in(0), number(1), STAYS_DRY, UP_TO_100_F).resistance() // 955 lb
   * }</pre>
   *
   * @param screwKind wood screw or lag screw
   * @param diameter D over the thread, of a lag screw its shank, 0.1 in to 0.5 in
   * @param length of the screw, 0.5 in to 16 in
   * @param thread length of the threaded part with its tip, 0.25 in to 16 in
   * @param tip length of the tapered tip that does not count, 0 in to 1 in
   * @param specificGravity G of the rafter, 0.2 to 0.8
   * @param thickness of what is held down, 0.05 in to 3 in
   * @param shim below it, not counted as holding wood, 0 in to 3 in
   * @param loadDuration C_D of the shortest load, 0.9 to 1.6
   * @param moisture of the rafter when fastened and afterwards
   * @param warmth that the wood keeps in service
   * @return inches of thread that count, and pounds for one screw
   * @throws RefusedException if a number lies outside its range
   * @see "NDS 2018 sections 12.2.1 and 12.2.2, secondary source, with Tables 11.3.3 and 11.3.4 from
   *     memory"
   */
  @LibraryFunction
  public static HeldScrew screwResistance(
      @Column("screw_kind") OneOf<ScrewKind> screwKind,
      @Column("diameter_in") Figure<Length> diameter,
      @Column("length_in") Figure<Length> length,
      @Column("thread_in") Figure<Length> thread,
      @Column(value = "tip_in", preset = "0") Figure<Length> tip,
      @Column("specific_gravity") Figure<Ratio> specificGravity,
      @Column("thickness_in") Figure<Length> thickness,
      @Column(value = "shim_in", preset = "0") Figure<Length> shim,
      @Column(value = "load_duration", preset = "1.6") Figure<Ratio> loadDuration,
      @Column(value = "moisture", preset = "stays-dry") OneOf<WoodMoisture> moisture,
      @Column(value = "warmth", preset = "up-to-100-f") OneOf<WoodWarmth> warmth) {
    Choice<ScrewKind> kind = screwKind.choice().argument("screw_kind");
    var d =
        diameter.within(
            "diameter_in", Units.INCH, Limits.between(0.1, 0.5, "a #10 screw has 0.19"));
    var screw = Adjustments.length(length);
    var threaded =
        thread.within(
            "thread_in", Units.INCH, Limits.between(0.25, 16, "about two thirds of the length"));
    var tapered = tip.within("tip_in", Units.INCH, Limits.between(0, 1, "0 for a wood screw"));
    var held = Adjustments.heldThickness(thickness);
    var shimmed = Adjustments.shim(shim);
    var cd = Adjustments.loadDuration(loadDuration);
    Choice<WoodMoisture> damp = moisture.choice().argument("moisture");
    var cm = Adjustments.screwMoisture(damp);
    var ct = Adjustments.warmth(warmth, damp);

    var threadHeld =
        screw
            .minus(held)
            .minus(shimmed)
            .min(threaded)
            .minus(tapered)
            .max(NOTHING)
            .as("thread_held_in", Units.INCH, Nds.COPIED.at("12.2"));
    var perInch =
        Figure.choose(
                kind.is(ScrewKind.LAG_SCREW),
                Withdrawal.lagWithdrawal(specificGravity, d)
                    .as("lag_screw_reference_lb_per_in", Units.POUND_PER_INCH),
                Withdrawal.screwWithdrawal(specificGravity, d)
                    .as("wood_screw_reference_lb_per_in", Units.POUND_PER_INCH))
            .as("reference_lb_per_in", Units.POUND_PER_INCH)
            .symbol("W");
    return new HeldScrew(
        threadHeld,
        perInch
            .times(threadHeld)
            .times(cd)
            .times(cm)
            .times(ct)
            .as("resistance_lb", Units.POUND, Nds.REMEMBERED.at("11.3")));
  }

  /**
   * What one wood screw that holds in the thickness of a panel only may be taken to hold, such as
   * the screw of a roofing clip between the rafters.
   *
   * <pre>
   * thread     = thickness − the part of the point that stays inside the panel
   * resistance = 2850 psi × G² × D × thread × C_D × C_M
   * </pre>
   *
   * <p>Does not cover screws in panels by test: this is the equation for solid wood used on a
   * panel, an estimate that no table prints. One study found plywood weaker than it. A tested value
   * of the clip's maker, or a pull test on this deck, comes first. Old holes hold less: move the
   * clip. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * panelScrewWithdrawal(number(0.42), in(0.19), in("15/32"), in(0), number(1.6), STAYS_DRY) // 71.6 lb
   * }</pre>
   *
   * @param specificGravity G of the panel, 0.2 to 0.8
   * @param diameter D over the thread, 0.05 in to 0.5 in
   * @param thickness of the panel, 0.05 in to 3 in
   * @param point the part of the screw's point inside the panel, 0 in to 1 in; 0 if it comes
   *     through
   * @param loadDuration C_D of the shortest load, 0.9 to 1.6
   * @param moisture of the panel when fastened and afterwards
   * @return pounds for one screw
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: NDS 2018 section 12.2.2 used on a panel"
   */
  @LibraryFunction
  @Column("resistance_lb")
  public static Figure<Force> panelScrewWithdrawal(
      @Column("specific_gravity") Figure<Ratio> specificGravity,
      @Column("diameter_in") Figure<Length> diameter,
      @Column("thickness_in") Figure<Length> thickness,
      @Column(value = "point_in", preset = "0") Figure<Length> point,
      @Column(value = "load_duration", preset = "1.6") Figure<Ratio> loadDuration,
      @Column(value = "moisture", preset = "stays-dry") OneOf<WoodMoisture> moisture) {
    var panel = Adjustments.heldThickness(thickness);
    var inside =
        point.within("point_in", Units.INCH, Limits.between(0, 1, "0 if the point comes through"));
    var perInch =
        Withdrawal.screwWithdrawal(specificGravity, diameter)
            .as("reference_lb_per_in", Units.POUND_PER_INCH)
            .symbol("W");
    var thread = panel.minus(inside).max(NOTHING).as("thread_held_in", Units.INCH);
    return perInch
        .times(thread)
        .times(Adjustments.loadDuration(loadDuration))
        .times(Adjustments.screwMoisture(moisture.choice().argument("moisture")))
        .as("resistance_lb", Units.POUND, Source.COMMON_PRACTICE);
  }
}

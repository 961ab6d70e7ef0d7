package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.wood.Nds;
import sheathwright.wood.Shank;
import sheathwright.wood.WoodMoisture;
import sheathwright.wood.WoodWarmth;

/** What one nail of a deck holds against the wind. */
public final class NailResistances {

  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);

  private NailResistances() {}

  /**
   * What one nail through a panel into a rafter holds against uplift: the smaller of withdrawal and
   * head pull-through, both adjusted.
   *
   * <pre>
   * penetration  = length − panel − shim; of a ring shank no more than the length of its rings
   * withdrawal   = W × penetration × C_D × C_M × C_t
   * pull-through = W_H × C_D × C_t
   * resistance   = the lesser of the two
   * C_t = 1, 0.8 and 0.7 to 100, 125 and 150 degrees; in wood that is wet in service 1, 0.7 and 0.5
   * </pre>
   *
   * <p>Does not cover nails that miss, split or stand in decayed wood, which hold nothing,
   * overdriven heads, end grain, toe-nails, wet panels, or the nail's own strength. Before the 2018
   * edition pull-through was not checked. The values are allowable ones, to be held against an
   * ASD-level uplift. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * nailResistance(in(0.131), in(2.5), in(0.281), SMOOTH, in(1.5), number(0.42), in("7/16"), number(0.5), in(0), number(1.6), STAYS_DRY, UP_TO_100_F).resistance() // 68.2 lb
   * nailResistance(in(0.131), in(2.5), in(0.281), SMOOTH, in(1.5), number(0.5), in("15/32"), number(0.42), in(0), number(1.6), STAYS_DRY, UP_TO_100_F).governs() // pull-through
   * }</pre>
   *
   * @param diameter D of the shank, 0.05 in to 0.24 in
   * @param length of the nail, 0.5 in to 16 in
   * @param headDiameter D_H of a round head, 0.1 in to 1 in
   * @param shank smooth, ring or stainless
   * @param rings length of the ringed part, 0 in to 8 in; matters for a ring shank only
   * @param specificGravity G of the rafter, 0.2 to 0.8
   * @param thickness of the panel, 0.05 in to 3 in
   * @param panelGravity G of the panel, 0.2 to 0.8
   * @param shim between panel and rafter, not counted as holding wood, 0 in to 3 in
   * @param loadDuration C_D of the shortest load, 0.9 to 1.6
   * @param moisture of the rafter when nailed and afterwards
   * @param warmth that the wood keeps in service
   * @return penetration in inches; withdrawal, pull-through and the lesser in pounds; which governs
   * @throws RefusedException if a number lies outside its range
   * @see "NDS 2018 sections 12.2.3 and 12.2.5 with Tables 11.3.3 and 11.3.4: the smooth nail
   *     secondary source, all else from memory"
   */
  @LibraryFunction
  public static HeldNail nailResistance(
      @Column("diameter_in") Figure<Length> diameter,
      @Column("length_in") Figure<Length> length,
      @Column("head_diameter_in") Figure<Length> headDiameter,
      @Column("shank") OneOf<Shank> shank,
      @Column(value = "rings_in", preset = "1.5") Figure<Length> rings,
      @Column("specific_gravity") Figure<Ratio> specificGravity,
      @Column("thickness_in") Figure<Length> thickness,
      @Column("panel_gravity") Figure<Ratio> panelGravity,
      @Column(value = "shim_in", preset = "0") Figure<Length> shim,
      @Column(value = "load_duration", preset = "1.6") Figure<Ratio> loadDuration,
      @Column(value = "moisture", preset = "stays-dry") OneOf<WoodMoisture> moisture,
      @Column(value = "warmth", preset = "up-to-100-f") OneOf<WoodWarmth> warmth) {
    Choice<Shank> kind = shank.choice().argument("shank");
    var nail = Adjustments.length(length);
    var ringed =
        rings.within("rings_in", Units.INCH, Limits.between(0, 8, "1-1/2 for sheathing nails"));
    var panel = Adjustments.heldThickness(thickness);
    var shimmed = Adjustments.shim(shim);
    var cd = Adjustments.loadDuration(loadDuration);
    Choice<WoodMoisture> damp = moisture.choice().argument("moisture");
    var cm = Adjustments.nailMoisture(damp, kind);
    var ct = Adjustments.warmth(warmth, damp);

    var inRafter =
        nail.minus(panel).minus(shimmed).max(NOTHING).as("length_in_rafter_in", Units.INCH);
    var ringsInRafter = inRafter.min(ringed).as("rings_in_rafter_in", Units.INCH);
    var penetration =
        Figure.choose(kind.is(Shank.RING), ringsInRafter, inRafter)
            .as("penetration_in", Units.INCH, Nds.REMEMBERED.at("12.2.3"))
            .symbol("p");
    var perInch =
        Withdrawal.nailWithdrawal(specificGravity, diameter, kind)
            .as("reference_lb_per_in", Units.POUND_PER_INCH)
            .symbol("W");
    var withdrawal =
        perInch
            .times(penetration)
            .times(cd)
            .times(cm)
            .times(ct)
            .as("withdrawal_lb", Units.POUND, Nds.REMEMBERED.at("11.3"));
    var ofHead =
        PullThrough.nailPullThrough(
                panelGravity.within(
                    "panel_gravity", Units.RATIO, Limits.between(0.2, 0.8, "OSB has 0.50")),
                headDiameter,
                panel)
            .as("reference_pull_through_lb", Units.POUND)
            .symbol("W_H");
    var pullThrough =
        ofHead.times(cd).times(ct).as("pull_through_lb", Units.POUND, Nds.REMEMBERED.at("11.3"));
    return new HeldNail(
        penetration,
        withdrawal,
        pullThrough,
        withdrawal.min(pullThrough).as("resistance_lb", Units.POUND, Nds.REMEMBERED.at("12.2")),
        Choice.choose(
                withdrawal.isAtMost(pullThrough),
                HeldNail.Governs.WITHDRAWAL,
                HeldNail.Governs.PULL_THROUGH)
            .as("governs"));
  }
}

package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.wood.ConnectionFactors;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.Nds;
import sheathwright.wood.ServiceConditions;

/** What one nail of a deck holds against the wind. */
public final class NailResistances {

  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);

  private static final String WET_PANEL =
      "moisture says that the panel is wet in service; what it takes to pull a panel over a nail's"
          + " head is printed for dry panels only (NDS 2018, 12.2.5, from memory): a panel that is"
          + " replaced and stays-dry has a number, a wet one is for a licensed engineer";

  private NailResistances() {}

  /**
   * What one nail through a panel into a rafter holds against uplift: the smaller of withdrawal and
   * head pull-through, both adjusted.
   *
   * <pre>
   * penetration  = length − panel − shim; of a ring shank no more than the length of its rings
   * withdrawal   = W × penetration × C_D × C_M × C_t
   * pull-through = W_H × C_D × C_t, where the panel stays dry
   * resistance   = the lesser of the two
   * C_t = 1, 0.8 and 0.7 to 100, 125 and 150 degrees; in wood that is wet in service 1, 0.7 and 0.5
   * </pre>
   *
   * <p>Does not cover nails that miss, split or stand in decayed wood, which hold nothing,
   * overdriven heads, end grain, toe-nails, or the nail's own strength. The code prints no
   * pull-through of wet panels: where the wood is wet in service, penetration and withdrawal are
   * given, and pull-through, resistance and what governs are refused. Before the 2018 edition
   * pull-through was not checked. The values are allowable ones, to be held against an ASD-level
   * uplift. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * nailResistance(Nail.shank(SMOOTH).diameter(in(0.131)).length(in(2.5)).head(in(0.281)), number(0.42), NailedPanel.thickness(in("7/16")).gravity(number(0.5)), DURATION_TEN_MINUTES, DRY).resistance() // 68.2 lb
   * nailResistance(Nail.shank(SMOOTH).diameter(in(0.131)).length(in(2.5)).head(in(0.281)), number(0.5), NailedPanel.thickness(in("15/32")).gravity(number(0.42)), DURATION_TEN_MINUTES, DRY).governs() // pull-through
   * nailResistance(Nail.shank(SMOOTH).diameter(in(0.131)).length(in(2.5)).head(in(0.281)), number(0.42), NailedPanel.thickness(in("7/16")).gravity(number(0.5)), DURATION_TEN_MINUTES, ServiceConditions.of(STAYS_WET)).withdrawal() // 68.2 lb
   * }</pre>
   *
   * @param nail in numbers
   * @param specificGravity G of the rafter, 0.2 to 0.8
   * @param panel that is nailed down
   * @param loadDuration the shortest load; of wind ten minutes
   * @param service how damp and how warm rafter and panel are
   * @return penetration in inches; withdrawal, pull-through and the lesser in pounds; which governs
   * @throws RefusedException if a number lies outside its range, or of the head of a nail through a
   *     wet panel
   * @see "NDS 2018 sections 12.2.3 and 12.2.5 with Tables 11.3.3 and 11.3.4: the smooth nail
   *     secondary source, all else from memory"
   */
  @LibraryFunction(words = {"pull out", "hold down", "ring shank"})
  public static HeldNail nailResistance(
      Nail nail,
      @Column("specific_gravity") Figure<Ratio> specificGravity,
      NailedPanel panel,
      @Column(value = "load_duration", preset = "ten-minutes") OneOf<LoadDuration> loadDuration,
      ServiceConditions service) {
    Choice<Shank> kind = nail.shank().choice();
    var thickness = panel.layer().thickness();
    var cd =
        Nds.loadDuration("load_duration_factor", loadDuration.choice().argument("load_duration"));
    var cm = WithdrawalMoisture.ofNail(service.moisture().choice(), kind);
    var ct = ConnectionFactors.temperature(service);

    var inRafter =
        nail.length()
            .minus(thickness)
            .minus(panel.layer().shim())
            .max(NOTHING)
            .as("length_in_rafter_in", Units.INCH);
    var ringsInRafter = inRafter.min(nail.rings()).as("rings_in_rafter_in", Units.INCH);
    var penetration =
        Figure.choose(kind.is(Shank.RING), ringsInRafter, inRafter)
            .as("penetration_in", Units.INCH, Nds.REMEMBERED.at("12.2.3"))
            .symbol("p");
    var perInch =
        Withdrawal.nailWithdrawal(specificGravity, nail.diameter(), kind)
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
        PullThrough.nailPullThrough(PanelWood.of(panel.gravity(), thickness), nail.head())
            .as("reference_pull_through_lb", Units.POUND)
            .symbol("W_H");
    var pullThrough =
        ofHead
            .times(cd)
            .times(ct)
            .onlyIf(service.inService().is(ServiceConditions.InService.DRY), WET_PANEL)
            .as("pull_through_lb", Units.POUND, Nds.REMEMBERED.at("11.3"));
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

  /**
   * What one nail holds against the wind.
   *
   * @param penetration into sound wood that counts
   * @param withdrawal adjusted, of the whole penetration
   * @param pullThrough adjusted, of the head
   * @param resistance the smaller of the two
   * @param governs which of the two it is
   */
  public record HeldNail(
      @Column("penetration_in") Figure<Length> penetration,
      @Column("withdrawal_lb") Figure<Force> withdrawal,
      @Column("pull_through_lb") Figure<Force> pullThrough,
      @Column("resistance_lb") Figure<Force> resistance,
      @Column("governs") Choice<Governs> governs) {

    /** How a nail lets go. */
    public enum Governs implements Option<Governs> {
      WITHDRAWAL,
      PULL_THROUGH
    }
  }
}

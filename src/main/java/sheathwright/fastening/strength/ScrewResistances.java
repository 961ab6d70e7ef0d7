package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.ConnectionFactors;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.Nds;
import sheathwright.wood.ServiceConditions;

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
   * screwResistance(Screw.kind(LAG_SCREW).diameter(in(0.5)).length(in(4)).thread(in(2.5)).tip(in("5/16")), number(0.55), HeldLayer.thickness(in(1.5)), DURATION_TEN_YEARS, DRY).resistance() // 955 lb
   * }</pre>
   *
   * @param screw in numbers
   * @param specificGravity G of the rafter, 0.2 to 0.8
   * @param held what it holds down
   * @param loadDuration the shortest load; of wind ten minutes
   * @param service how damp and how warm the rafter is
   * @return inches of thread that count, and pounds for one screw
   * @throws RefusedException if a number lies outside its range
   * @see "NDS 2018 sections 12.2.1 and 12.2.2, secondary source, with Tables 11.3.3 and 11.3.4 from
   *     memory"
   */
  @LibraryFunction
  public static HeldScrew screwResistance(
      Screw screw,
      @Column("specific_gravity") Figure<Ratio> specificGravity,
      HeldLayer held,
      @Column(value = "load_duration", preset = "ten-minutes") OneOf<LoadDuration> loadDuration,
      ServiceConditions service) {
    var d = screw.diameter();
    var cd =
        Nds.loadDuration("load_duration_factor", loadDuration.choice().argument("load_duration"));
    var cm = WithdrawalMoisture.ofScrew(service.moisture().choice());
    var ct = ConnectionFactors.temperature(service);

    var threadHeld =
        screw
            .length()
            .minus(held.thickness())
            .minus(held.shim())
            .min(screw.thread())
            .minus(screw.tip())
            .max(NOTHING)
            .as("thread_held_in", Units.INCH, Nds.COPIED.at("12.2"));
    var perInch =
        Figure.choose(
                screw.kind().choice().is(ScrewKind.LAG_SCREW),
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
   * resistance = 2850 psi × G² × D × thread × C_D × C_M × C_t
   * </pre>
   *
   * <p>Does not cover screws in panels by test: this is the equation for solid wood used on a
   * panel, an estimate that no table prints. One study found plywood weaker than it. A tested value
   * of the clip's maker, or a pull test on this deck, comes first. Old holes hold less: move the
   * clip. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * panelScrewWithdrawal(PanelWood.of(number(0.42), in("15/32")), PanelScrew.diameter(in(0.19)), DURATION_TEN_MINUTES, DRY) // 71.6 lb
   * }</pre>
   *
   * @param panel that holds it
   * @param screw in numbers
   * @param loadDuration the shortest load; of wind ten minutes
   * @param service how damp and how warm the panel is
   * @return pounds for one screw
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: NDS 2018 section 12.2.2 used on a panel"
   */
  @LibraryFunction
  @Column("resistance_lb")
  public static Figure<Force> panelScrewWithdrawal(
      PanelWood panel,
      PanelScrew screw,
      @Column(value = "load_duration", preset = "ten-minutes") OneOf<LoadDuration> loadDuration,
      ServiceConditions service) {
    var perInch =
        Withdrawal.screwWithdrawal(panel.gravity(), screw.diameter())
            .as("reference_lb_per_in", Units.POUND_PER_INCH)
            .symbol("W");
    var thread =
        panel.thickness().minus(screw.point()).max(NOTHING).as("thread_held_in", Units.INCH);
    return perInch
        .times(thread)
        .times(
            Nds.loadDuration(
                "load_duration_factor", loadDuration.choice().argument("load_duration")))
        .times(WithdrawalMoisture.ofScrew(service.moisture().choice()))
        .times(ConnectionFactors.temperature(service))
        .as("resistance_lb", Units.POUND, Source.COMMON_PRACTICE);
  }

  /**
   * What one screw holds against the wind.
   *
   * @param thread in sound wood that counts
   * @param resistance adjusted withdrawal
   */
  public record HeldScrew(
      @Column("thread_held_in") Figure<Length> thread,
      @Column("resistance_lb") Figure<Force> resistance) {}
}

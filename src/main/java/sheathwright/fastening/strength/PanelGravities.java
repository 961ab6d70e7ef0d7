package sheathwright.fastening.strength;

import sheathwright.catalog.Assumed;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;
import sheathwright.wood.Moisture;

/** Specific gravities of panels, by which fastener values go. */
public final class PanelGravities {

  private static final Table PANELS =
      Published.table("nds/2018/table-12.3.3b.csv", "panel_gravities", "panel gravities", 1);
  private static final Table HOLDING =
      Published.table(
          "panel-makers/undated/panel-holding-gravity.csv",
          "holding_gravities",
          "gravities of panels that hold nails",
          1);
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Source OF_ITS_DAY =
      Source.derived(
          "makers' gravity in the equation of its day, 1380 G^2.5 D, set equal to 1800 G² D");

  private PanelGravities() {}

  /**
   * The specific gravity of a panel as the sheet that is held down, for pull-through and side
   * members.
   *
   * <pre>
   * listed for the panel
   * </pre>
   *
   * <p>Does not cover a panel as the wood that holds (see {@code panel_holding_gravity}), nor wet
   * or delaminated panels.
   *
   * <pre>{@code
   * panelGravity(ANY_OSB) // 0.5
   * panelGravity(OTHER_PLYWOOD) // 0.42
   * }</pre>
   *
   * @param panel as stamped; plywood without a grade is other plywood
   * @return specific gravity, a pure number
   * @throws RefusedException if the table does not hold the panel
   * @see "NDS 2018 Table 12.3.3B, from memory"
   */
  @LibraryFunction
  @Column("specific_gravity")
  public static Figure<Ratio> panelGravity(@Column("panel") OneOf<HeldPanel> panel) {
    return PANELS
        .number(Units.RATIO, "specific_gravity", panel.choice().argument("panel"))
        .as("specific_gravity", Units.RATIO, PANELS.source());
  }

  /**
   * The specific gravity that a panel is worth as the wood that holds a nail, such as the nail of a
   * roof covering driven into the deck.
   *
   * <pre>
   * gravity = listed for the shank; for a ring shank the lesser of that and √(1380 × listed^2.5 ÷ 1800)
   * wet use = listed for the shank; 1 where the panel stays dry
   * </pre>
   *
   * <p>The makers gave their equivalent gravity, 0.70 for a ring shank, when ring shanks had no
   * equation of their own: it belongs to 1380 G^2.5 D. In today's 1800 G² D it would give half as
   * much again. Until the makers' paper itself is read and says otherwise the smaller is taken: the
   * gravity that gives in {@code nail_withdrawal} with a ring shank what theirs gave in theirs.
   *
   * <p>Does not cover stainless nails, screws, or nails whose point stays inside the panel. The wet
   * use factor belongs to the nail's value and is given beside the gravity, not inside it.
   * Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * panelHoldingGravity(RING, STAYS_DRY).gravity() // 0.5606
   * panelHoldingGravity(SMOOTH, STAYS_DRY).gravity() // 0.4
   * panelHoldingGravity(SMOOTH, STAYS_WET).wetUse() // 0.75
   * }</pre>
   *
   * @param shank smooth or ring
   * @param moisture of the panel when it is nailed and afterwards
   * @return equivalent specific gravity, and the factor to multiply the nail's value by
   * @throws RefusedException if nothing was tested for the shank
   * @see "common practice, no source: the panel makers' program of 1900 tests, read; that its
   *     gravity belongs to 1380 G^2.5 D is derived from its date"
   */
  @LibraryFunction
  public static HoldingGravity panelHoldingGravity(
      @Column("shank") OneOf<Shank> shank,
      @Column("moisture") @Assumed("stays-wet") OneOf<Moisture> moisture) {
    Choice<Shank> kind = shank.choice().argument("shank");
    var wetUse = HOLDING.number(Units.RATIO, "wet_use", kind).as("wet_use_listed", Units.RATIO);
    var listed =
        HOLDING
            .number(Units.RATIO, "specific_gravity", kind)
            .as("listed_gravity", Units.RATIO, HOLDING.source())
            .symbol("G_listed");
    var inTodaysEquation =
        Withdrawal.SMOOTH_PSI
            .times(listed.power(Withdrawal.SMOOTH_EXPONENT))
            .dividedBy(Withdrawal.RING_PSI)
            .squareRoot()
            .in(Units.RATIO)
            .min(listed)
            .as("ring_shank_gravity", Units.RATIO, OF_ITS_DAY);
    return new HoldingGravity(
        Figure.choose(kind.is(Shank.RING), inTodaysEquation, listed)
            .as("specific_gravity", Units.RATIO, HOLDING.source()),
        Figure.choose(moisture.choice().argument("moisture").is(Moisture.STAYS_DRY), ONE, wetUse)
            .as("wet_use_factor", Units.RATIO, HOLDING.source()));
  }

  /**
   * What a panel is worth as the wood that holds a nail.
   *
   * @param gravity equivalent specific gravity
   * @param wetUse to multiply the nail's value by
   */
  public record HoldingGravity(
      @Column("specific_gravity") Figure<Ratio> gravity,
      @Column("wet_use_factor") Figure<Ratio> wetUse) {}

  /** A panel as the sheet that is held down. */
  public enum HeldPanel implements Option<HeldPanel> {
    STRUCTURAL_1_PLYWOOD,
    OTHER_PLYWOOD,
    ANY_OSB
  }
}

package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.Nds;

/** What it takes to pull a panel over the heads of its nails. */
public final class PullThrough {

  private static final Source SOURCE = Nds.REMEMBERED.at("12.2.5");
  private static final Figure<Ratio> PI =
      Nds.number("pi", Math.PI, "π", Source.derived("circumference of a circle"));
  private static final Figure<Ratio> THICK =
      Nds.number("thick_panel_in_head_diameters", 2.5, "2.5", SOURCE);
  private static final Figure<Stress> THIN_PANEL =
      Figure.constant("thin_panel_pull_through_psi", 690, Units.PSI, SOURCE).symbol("690 psi");
  private static final Figure<Stress> THICK_PANEL =
      Figure.constant("thick_panel_pull_through_psi", 1725, Units.PSI, SOURCE).symbol("1725 psi");

  private PullThrough() {}

  /**
   * What it takes to pull a panel over the round head of one nail.
   *
   * <pre>
   * W_H = 690 psi × π × D_H × G² × t    where t ≤ 2.5 D_H
   * W_H = 1725 psi × π × D_H² × G²      where the panel is thicker
   * </pre>
   *
   * <p>Does not cover adjustment factors (see {@code nail_resistance}), overdriven, clipped or
   * off-center heads, staples, or wet panels. Editions before 2018 have no such clause. Screening
   * only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * nailPullThrough(PanelWood.of(number(0.5), in("7/16")), in(0.281)) // 66.6 lb
   * nailPullThrough(PanelWood.of(number(0.42), in("15/32")), in(0.281)) // 50.4 lb
   * }</pre>
   *
   * @param panel that is held down
   * @param headDiameter D_H of a round head, 0.1 in to 1 in
   * @return reference value in pounds for one nail
   * @throws RefusedException if a number lies outside its range
   * @see "NDS 2018 section 12.2.5, numbers from memory"
   */
  @LibraryFunction(words = {"head size"})
  @Column("pull_through_lb")
  public static Figure<Force> nailPullThrough(
      PanelWood panel, @Column("head_diameter_in") Figure<Length> headDiameter) {
    var g = panel.gravity();
    var head = Columns.of(Nail.class).let("head", headDiameter);
    var t = panel.thickness();

    var thin =
        THIN_PANEL
            .times(PI)
            .times(head)
            .times(g.squared())
            .times(t)
            .as("thin_panel_pull_through_lb", Units.POUND, SOURCE);
    var thick =
        THICK_PANEL
            .times(PI)
            .times(head.squared())
            .times(g.squared())
            .as("thick_panel_pull_through_lb", Units.POUND, SOURCE);
    return Figure.choose(t.isAtMost(THICK.times(head)), thin, thick)
        .as("pull_through_lb", Units.POUND, SOURCE);
  }
}

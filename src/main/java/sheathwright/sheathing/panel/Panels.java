package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.published.Published;
import sheathwright.roof.SheetSize;
import sheathwright.roof.SupportSpacing;

/** Plywood and OSB panels by their stamp. */
public final class Panels {

  private static final Table WEIGHTS =
      Published.table(
          "panel-makers/undated/panel-weights.csv", "panel_weights", "panel weights", 1);
  private static final Figure<Pressure> NONE = Figure.of(0, Units.PSF);
  private static final Figure<Length> SPACING_16 =
      Figure.constant("printed_spacing_16_in", 16, Units.INCH, PrintedPanel.SOURCE).symbol("16 in");
  private static final Figure<Length> SPACING_24 =
      Figure.constant("printed_spacing_24_in", 24, Units.INCH, PrintedPanel.SOURCE).symbol("24 in");
  private static final Figure<Pressure> DEAD_IN_THE_TABLE =
      Figure.constant("dead_in_the_table_psf", 10, Units.PSF, PrintedPanel.SOURCE).symbol("10 psf");

  private Panels() {}

  /**
   * How far a stamped panel may span as a roof deck, and how much live load it may carry over
   * supports as far apart as these.
   *
   * <pre>
   * max span = printed for the rating, with or without supported edges
   * live     = printed at the next larger printed spacing (16 in, 24 in, the rating's greatest span)
   *            less what the dead load has over 10 psf; none beyond that span
   * </pre>
   *
   * <p>Does not cover pieces under 24 in wide, pieces over one span only, panels with the strength
   * axis along the supports, slopes under 2 in 12 (where a stiffer panel is advised), loads on one
   * point, wind, fire-retardant or decayed panels. Clips, tongue and groove or lumber blocking
   * support an edge.
   *
   * <p>The live load is printed for supported edges: where the spacing is more than the max span,
   * it does not hold and the answer is no.
   *
   * <p>Old decks hold stamps that the code prints no more, or for other thicknesses only, such as
   * 24/0 at 7/16 in or 32/16 at 5/8 in: they count as the next lower rating that it prints, and a
   * panel with no stamp to read, {@code none}, counts as the least.
   *
   * <p>A single-floor rating such as 24 o.c. is written 24-oc. Loads are allowed loads, at a sag of
   * span over 180 in all and over 240 for the live load.
   *
   * <pre>{@code
   * panelSpan(RatedPanel.of(RATING_24_16, in("7/16")), in(24), NO, psf(10)).live() // 40 psf
   * panelSpan(RatedPanel.of(RATING_32_16, in("15/32")), in(24), NO, psf(15)).live() // 65 psf
   * panelSpan(RatedPanel.of(RATING_24_0, in("3/8")), in(24), NO, psf(10)).ok() // no
   * panelSpan(RatedPanel.of(RATING_24_0, in("3/8")), in(24), YES, psf(10)).ok() // yes
   * panelSpan(RatedPanel.of(RATING_32_16, in("5/8")), in(24), NO, psf(10)).countedAs() // 24/16
   * }</pre>
   *
   * @param stamped the panel
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @param edgeSupport whether the long edges are supported between the rafters
   * @param dead of all that the panel carries and the panel itself, 0 psf to 100 psf
   * @return greatest span in inches; live load in psf at this spacing; yes if the spacing is within
   *     the span and some live load is left; the printed rating that this goes by
   * @throws RefusedException if a number lies outside its range, or the panel is thinner than any
   *     that is printed for the rating and for the next lower one
   * @see "IRC 2021 Table R503.2.1.1(1), read on state code pages; rows alike in 2015, 2018 and
   *     2024; how old stamps count is common practice, no source, and their 5/16 in from memory"
   */
  @LibraryFunction(words = {"plywood", "OSB", "span rating", "thickness"})
  public static PanelSpan panelSpan(
      RatedPanel stamped,
      @Column("support_spacing_in") Figure<Length> supportSpacing,
      @Column("edge_support") OneOf<YesNo> edgeSupport,
      @Column(value = "dead_psf", preset = "10") Figure<Pressure> dead) {
    var panel = new PrintedPanel(stamped);
    var spacing = SupportSpacing.within(supportSpacing);
    var weight =
        dead.within(
            "dead_psf", Units.PSF, Limits.between(0, 100, "10 is what the table counts in"));

    var byEdges =
        Figure.choose(
                edgeSupport.choice().argument("edge_support").is(YesNo.YES),
                panel.supportedSpan(),
                panel.unsupportedSpan().as("unsupported_span_in", Units.INCH))
            .as("span_by_edges_in", Units.INCH);
    var maxSpan = byEdges.as("max_span_in", Units.INCH, PrintedPanel.SOURCE);
    var printedFrom24 =
        Figure.choose(spacing.isAtMost(SPACING_24), panel.liveAt24(), panel.liveAtMost())
            .as("live_over_16_in_psf", Units.PSF);
    var printed =
        Figure.choose(spacing.isAtMost(SPACING_16), panel.liveAt16(), printedFrom24)
            .as("live_at_spacing_psf", Units.PSF);
    var moreDead = weight.minus(DEAD_IN_THE_TABLE).max(NONE).as("dead_over_10_psf", Units.PSF);
    var left = printed.minus(moreDead).max(NONE).as("live_left_psf", Units.PSF);
    Condition isWithin = spacing.isAtMost(maxSpan);
    var greatest = panel.supportedSpan().as("greatest_span_in", Units.INCH);
    var live =
        Figure.choose(spacing.isAtMost(greatest), left, NONE)
            .as("live_psf", Units.PSF, PrintedPanel.SOURCE);
    return new PanelSpan(
        maxSpan, live, Condition.all(isWithin, live.isMoreThan(NONE)).as("ok"), panel.counted());
  }

  /**
   * What a dry panel weighs, by the square foot and by the sheet.
   *
   * <pre>
   * weight = listed for the performance category
   * sheet  = weight × length × width
   * </pre>
   *
   * <p>Does not cover wet panels, which can weigh far more: double the dry weight is a guess from
   * memory for old wet ones. Makers differ by about a fifth either way.
   *
   * <pre>{@code
   * panelWeight(CATEGORY_7_16, OSB, FOUR_BY_EIGHT).sheet() // 44.8 lb
   * panelWeight(CATEGORY_15_32, PLYWOOD, FOUR_BY_EIGHT).weight() // 1.4 psf
   * }</pre>
   *
   * @param category performance category as stamped
   * @param kind plywood or OSB
   * @param size of the sheet
   * @return pounds by the square foot, and pounds of one sheet
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: panel makers' list, secondary source for 15/32, 1/2, 19/32
   *     and 7/16 OSB, the others from memory"
   */
  @LibraryFunction(words = {"plywood", "OSB", "heavy"})
  public static PanelWeight panelWeight(
      @Column("category") OneOf<PanelCategory> category,
      @Column("kind") OneOf<PanelKind> kind,
      SheetSize size) {
    var weight =
        WEIGHTS
            .numberAt(
                Units.PSF, kind.choice().argument("kind"), category.choice().argument("category"))
            .as("weight_psf", Units.PSF);
    var sheet =
        weight
            .times(size.length().times(size.width()))
            .as("sheet_lb", Units.POUND, WEIGHTS.source());
    return new PanelWeight(weight, sheet);
  }
}

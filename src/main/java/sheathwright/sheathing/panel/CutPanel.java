package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;

/**
 * A piece cut from a panel, as it is to lie.
 *
 * @param length along the strength axis
 * @param width across the strength axis
 * @param axis how the strength axis lies on the supports
 * @param edgesSupported whether both long edges lie on blocking or are clipped to a neighbor
 */
public record CutPanel(
    @Column(value = "piece_length_in", least = 1, most = 192, rule = "a whole sheet has 96")
        Figure<Length> length,
    @Column(value = "piece_width_in", least = 1, most = 96, rule = "a whole sheet has 48")
        Figure<Length> width,
    @Column(value = "strength_axis", preset = "across") OneOf<StrengthAxis> axis,
    @Column(value = "edges_supported", preset = "no") OneOf<YesNo> edgesSupported) {

  private static final Columns COLUMNS = Columns.of(CutPanel.class);

  public CutPanel {
    length = COLUMNS.let("length", length);
    width = COLUMNS.let("width", width);
    axis = COLUMNS.let("axis", axis);
    edgesSupported = COLUMNS.let("edgesSupported", edgesSupported);
  }

  /** A piece of this length across the supports; its width is still to be said. */
  public static CutPanel length(Figure<Length> given) {
    return new CutPanel(given, null, null, null);
  }

  public CutPanel width(Figure<Length> given) {
    return new CutPanel(length, given, axis, edgesSupported);
  }

  public CutPanel axis(OneOf<StrengthAxis> given) {
    return new CutPanel(length, width, given, edgesSupported);
  }

  public CutPanel edgesSupported(OneOf<YesNo> given) {
    return new CutPanel(length, width, axis, given);
  }
}

package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;

/**
 * What a building department asks of an existing deck that gets a new covering.
 *
 * @param oldNailsCount whether the rule lets this deck's nails count in this wind
 * @param enough old nails no further apart than this are enough by the rule; 0 if they never are
 * @param edge spacing that the rule wants along the sheet's edges on framing
 * @param field spacing that the rule wants on the supports between
 */
public record ReRoofRule(
    @Column("old_nails_count") OneOf<YesNo> oldNailsCount,
    @Column(
            value = "enough_spacing_in",
            preset = "6",
            least = 0,
            most = 24,
            rule = "0 if they never are enough")
        Figure<Length> enough,
    @Column(
            value = "edge_spacing_in",
            preset = "6",
            least = Nailing.LEAST_IN,
            most = Nailing.MOST_IN,
            rule = Nailing.EDGE_RULE)
        Figure<Length> edge,
    @Column(
            value = "field_spacing_in",
            preset = "6",
            least = Nailing.LEAST_IN,
            most = Nailing.MOST_IN,
            rule = Nailing.FIELD_RULE)
        Figure<Length> field) {

  private static final Columns COLUMNS = Columns.of(ReRoofRule.class);

  public ReRoofRule {
    oldNailsCount = COLUMNS.let("oldNailsCount", oldNailsCount);
    enough = COLUMNS.let("enough", enough);
    edge = COLUMNS.let("edge", edge);
    field = COLUMNS.let("field", field);
  }

  /** A rule that lets old nails count or not, with the usual spacings. */
  public static ReRoofRule oldNailsCount(OneOf<YesNo> count) {
    return new ReRoofRule(count, null, null, null);
  }

  public ReRoofRule enough(Figure<Length> spacing) {
    return new ReRoofRule(oldNailsCount, spacing, edge, field);
  }

  public ReRoofRule edge(Figure<Length> spacing) {
    return new ReRoofRule(oldNailsCount, enough, spacing, field);
  }

  public ReRoofRule field(Figure<Length> spacing) {
    return new ReRoofRule(oldNailsCount, enough, edge, spacing);
  }

  /** The nails that it wants. */
  Nailing nailing() {
    return Nailing.edge(edge).field(field);
  }
}

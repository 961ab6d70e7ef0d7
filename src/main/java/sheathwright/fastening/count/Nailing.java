package sheathwright.fastening.count;

import sheathwright.catalog.Assumed;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;

/**
 * How far apart the nails of a panel stand, and where.
 *
 * @param edge nail to nail along the panel's edges on framing
 * @param field nail to nail on the supports between
 * @param blockedEdges whether the long edges lie on blocking and are nailed to it
 */
public record Nailing(
    @Column(
            value = "edge_spacing_in",
            least = Nailing.LEAST_IN,
            most = Nailing.MOST_IN,
            rule = Nailing.EDGE_RULE)
        @Assumed("6")
        Figure<Length> edge,
    @Column(
            value = "field_spacing_in",
            least = Nailing.LEAST_IN,
            most = Nailing.MOST_IN,
            rule = Nailing.FIELD_RULE)
        @Assumed("12")
        Figure<Length> field,
    @Column(value = "blocked_edges", preset = "no") OneOf<YesNo> blockedEdges) {

  /** The range of a nail spacing that a schedule or a rule may want. */
  static final double LEAST_IN = 1;

  static final double MOST_IN = 24;
  static final String EDGE_RULE = "6 is usual, 4 in high wind";
  static final String FIELD_RULE = "12 or 6 are usual";

  private static final Columns COLUMNS = Columns.of(Nailing.class);

  public Nailing {
    edge = COLUMNS.let("edge", edge);
    field = COLUMNS.let("field", field);
    blockedEdges = COLUMNS.let("blockedEdges", blockedEdges);
  }

  /** Nails this far apart on edges, which are not blocked; those in the field are still to say. */
  public static Nailing edge(Figure<Length> spacing) {
    return new Nailing(spacing, null, null);
  }

  public Nailing field(Figure<Length> spacing) {
    return new Nailing(edge, spacing, blockedEdges);
  }

  public Nailing blockedEdges(OneOf<YesNo> blocked) {
    return new Nailing(edge, field, blocked);
  }
}

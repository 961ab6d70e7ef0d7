package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;

/**
 * A panel as it is stamped.
 *
 * @param rating span rating as stamped; none where nobody can read it
 * @param thickness performance category as stamped, within 1/128 in of one that is printed for the
 *     rating; any other counts under the next lower rating
 */
public record RatedPanel(
    @Column("span_rating") OneOf<SpanRating> rating,
    @Column(
            value = "thickness_in",
            least = 0.25,
            most = 1.25,
            rule = "as stamped; 7/16 and 15/32 are usual")
        Figure<Length> thickness) {

  private static final Columns COLUMNS = Columns.of(RatedPanel.class);

  public RatedPanel {
    rating = COLUMNS.let("rating", rating);
    thickness = COLUMNS.let("thickness", thickness);
  }

  /** A panel by its stamp. */
  public static RatedPanel of(OneOf<SpanRating> rating, Figure<Length> thickness) {
    return new RatedPanel(rating, thickness);
  }
}

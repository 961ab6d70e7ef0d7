package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.OneOf;

/**
 * What the grade stamp on a stick of today's lumber says.
 *
 * @param species species group
 * @param grade visual grade
 */
public record GradeStamp(
    @Column("species") OneOf<Species> species, @Column("grade") OneOf<Grade> grade) {

  private static final Columns COLUMNS = Columns.of(GradeStamp.class);

  public GradeStamp {
    species = COLUMNS.let("species", species);
    grade = COLUMNS.let("grade", grade);
  }

  public static GradeStamp of(OneOf<Species> species, OneOf<Grade> grade) {
    return new GradeStamp(species, grade);
  }

  /** The same stamp, its words named by whose it is. */
  public GradeStamp of(String whose) {
    Columns named = COLUMNS.of(whose);
    return new GradeStamp(named.let("species", species), named.let("grade", grade));
  }
}

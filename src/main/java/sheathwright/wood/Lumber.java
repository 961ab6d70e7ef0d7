package sheathwright.wood;

import sheathwright.catalog.Assumed;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.OneOf;

/**
 * Sawn lumber as its grade stamp names it, which is what its design values are looked up by.
 *
 * @param species species group on the grade stamp
 * @param grade visual grade on the grade stamp
 * @param size nominal size, which finds the values
 * @param valueSet edition of the design values, fitting the age of the wood
 */
public record Lumber(
    @Column("species") OneOf<Species> species,
    @Column("grade") OneOf<Grade> grade,
    @Column("size") OneOf<LumberSize> size,
    @Column("value_set")
        @Assumed("nds2018")
        @Assumed(value = "southern-pine-2012", where = "species", is = "southern-pine")
        OneOf<ValueSet> valueSet) {

  private static final Columns COLUMNS = Columns.of(Lumber.class);

  public Lumber {
    species = COLUMNS.let("species", species);
    grade = COLUMNS.let("grade", grade);
    size = COLUMNS.let("size", size);
    valueSet = COLUMNS.let("valueSet", valueSet);
  }

  /** Lumber of this stamp and size, by the values of an edition. */
  public static Lumber of(
      OneOf<Species> species,
      OneOf<Grade> grade,
      OneOf<LumberSize> size,
      OneOf<ValueSet> valueSet) {
    return new Lumber(species, grade, size, valueSet);
  }

  /** The same wood in another size. */
  public Lumber size(OneOf<LumberSize> other) {
    return new Lumber(species, grade, other, valueSet);
  }
}

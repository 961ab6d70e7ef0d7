package sheathwright.wood;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/**
 * Reference design values of sawn lumber, all value sets in one table, so that one look-up finds a
 * value whichever edition fits the wood.
 */
public final class LumberValues {

  private static final List<String> SIZES = List.of("2x4", "2x6", "2x8", "2x10", "2x12");
  private static final List<String> OTHERS = List.of("fv_psi", "fc_perp_psi", "e_psi", "emin_psi");
  private static final Table SIZES_PRINTED =
      Published.table("nds/2018/size-factor.csv", "size_factor", "size factors", 2);
  private static final Table SIZE_FACTOR = LeastWood.ofSizes(SIZES_PRINTED);
  private static final Table VALUES = LeastWood.ofLumber(allValueSets(), SIZES, SIZES_PRINTED);

  private final OneOf<Species> species;
  private final OneOf<Grade> grade;
  private final OneOf<LumberSize> size;
  private final OneOf<ValueSet> valueSet;

  public LumberValues(Lumber lumber) {
    species = lumber.species();
    grade = lumber.grade();
    size = lumber.size();
    valueSet = lumber.valueSet();
  }

  public Figure<Stress> bending() {
    return VALUES.numberAt(Units.PSI, size, valueSet, species, grade);
  }

  public Figure<Stress> shear() {
    return VALUES.number(Units.PSI, "fv_psi", valueSet, species, grade);
  }

  public Figure<Stress> bearing() {
    return VALUES.number(Units.PSI, "fc_perp_psi", valueSet, species, grade);
  }

  public Figure<Stress> modulus() {
    return VALUES.number(Units.PSI, "e_psi", valueSet, species, grade);
  }

  Figure<Stress> minModulus() {
    return VALUES.number(Units.PSI, "emin_psi", valueSet, species, grade);
  }

  public Figure<Ratio> sizeFactor() {
    return SIZE_FACTOR.numberAt(Units.RATIO, species, grade, size);
  }

  private static Table allValueSets() {
    Table table4a = Published.table("nds/2018/table-4a.csv", "table_4a", "NDS 2018 Table 4A", 2);
    Table table4b = Published.table("nds/2018/table-4b.csv", "table_4b", "NDS 2018 Table 4B", 2);
    Table old4a = Published.table("nds/1997/table-4a.csv", "old_4a", "NDS 1997 Table 4A", 2);
    Table oldPine =
        Published.table("spib/2012/southern-pine.csv", "old_pine", "southern pine before 2013", 2);
    Table oldPineMinimum =
        Published.table(
            "spib/2012/minimum-modulus.csv", "old_minimum", "minimum moduli before 2013", 2);
    List<List<String>> rows = new ArrayList<>();
    rows.addAll(underValueSet(ValueSet.NDS2018, table4a));
    rows.addAll(underValueSet(ValueSet.NDS2018, table4b));
    rows.addAll(underValueSet(ValueSet.NDS1997, old4a));
    rows.addAll(underValueSet(ValueSet.NDS1997, table4b));
    rows.addAll(underValueSet(ValueSet.SOUTHERN_PINE_2012, oldPine, oldPineMinimum));
    List<String> columns = new ArrayList<>(SIZES);
    columns.addAll(OTHERS);
    List<String> notes = new ArrayList<>();
    for (Table table : List.of(table4a, table4b, old4a, oldPine, oldPineMinimum)) {
      notes.add(table.source().toString());
    }
    return new Table(
        "lumber",
        "lumber design values",
        List.of("value_set", "species", "grade"),
        List.copyOf(columns),
        List.copyOf(rows),
        Source.secondHand("NDS Supplement by value set")
            .but("from memory: Table 4B, 1997, Emin before 2013"),
        List.copyOf(notes));
  }

  private static List<List<String>> underValueSet(ValueSet set, Table table) {
    return underValueSet(set, table, table);
  }

  /**
   * Rows under their value set; a table that prints one bending value gives it to every size, and
   * the minimum modulus may stand in a table of its own with rows in the same order.
   */
  private static List<List<String>> underValueSet(ValueSet set, Table table, Table minimum) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      List<String> row = table.rows().get(i);
      List<String> wide = new ArrayList<>(List.of(set.word(), row.get(0), row.get(1)));
      for (String size : SIZES) {
        wide.add(cell(table, row, table.columns().contains(size) ? size : "fb_psi"));
      }
      for (String other : OTHERS) {
        boolean isElsewhere = !table.columns().contains(other);
        wide.add(
            isElsewhere ? cell(minimum, minimum.rows().get(i), other) : cell(table, row, other));
      }
      rows.add(List.copyOf(wide));
    }
    return List.copyOf(rows);
  }

  private static String cell(Table table, List<String> row, String column) {
    return row.get(table.keys().size() + table.columns().indexOf(column));
  }
}

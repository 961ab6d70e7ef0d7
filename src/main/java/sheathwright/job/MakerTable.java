package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sheathwright.catalog.Numbers;
import sheathwright.fastening.uplift.MakerRequirement;
import sheathwright.fastening.uplift.MakerRequirement.Sense;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.TableReader;

/**
 * What the covering's maker asks of the deck, from a table that the user fills from the maker's
 * engineering: each against what is there, with its evidence.
 */
final class MakerTable {

  static final List<Field> FIELDS =
      List.of(
          Field.line("requirement", "Requirement"),
          Field.word("unit", "Unit", MakerUnit.class),
          Field.word("sense", "At least or at most", Sense.class),
          Field.line("required", "Required"),
          Field.line("found", "Found"),
          Field.text("evidence", "Evidence"));

  private static final Limits SENSIBLE = Limits.between(0, 1_000_000, "");

  private MakerTable() {}

  /** The requirements of a table; what cannot be read is said with its line. */
  static List<MakerRequirement> read(
      TableReader reader, CsvFile file, List<Map<String, Traced>> rows) {
    List<MakerRequirement> requirements = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Map<String, Traced> row = rows.get(i);
      if (row.size() == FIELDS.size() && !row.containsValue(null)) {
        CsvFile.Line line = file.lines().get(i);
        Unit<?> unit = ((MakerUnit) ((Choice<?>) row.get("unit")).value()).unit();
        Figure<?> required = number(reader, file, line, row, "required", unit);
        Figure<?> found = number(reader, file, line, row, "found", unit);
        if (required != null && found != null) {
          @SuppressWarnings("unchecked") // the fields say what each is
          MakerRequirement requirement =
              new MakerRequirement(
                  (Choice<String>) row.get("requirement"),
                  required,
                  (Choice<Sense>) row.get("sense"),
                  found,
                  (Choice<String>) row.get("evidence"));
          requirements.add(requirement);
        }
      }
    }
    return requirements;
  }

  private static Figure<?> number(
      TableReader reader,
      CsvFile file,
      CsvFile.Line line,
      Map<String, Traced> row,
      String column,
      Unit<?> unit) {
    Traced text = row.get(column);
    try {
      double number = Numbers.read(file.readable(text.plain()), unit);
      Figure<?> figure = Figure.input(column, number, unit, SENSIBLE, text.source());
      figure.refusal().ifPresent(refusal -> reader.problem(file, line, column, refusal.reason()));
      return figure;
    } catch (RefusedException unreadable) {
      reader.problem(file, line, column, unreadable.getMessage());
      return null;
    }
  }

  /** The units that makers write their requirements in. */
  enum MakerUnit implements sheathwright.figure.Option<MakerUnit> {
    IN(Units.INCH),
    FT(Units.FOOT),
    PSF(Units.PSF),
    LB(Units.POUND),
    COUNT(Units.RATIO);

    private final Unit<?> unit;

    MakerUnit(Unit<?> unit) {
      this.unit = unit;
    }

    Unit<?> unit() {
      return unit;
    }
  }
}

package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import sheathwright.catalog.TypedCell;
import sheathwright.fastening.uplift.MakerRequirement;
import sheathwright.fastening.uplift.MakerRequirement.Sense;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;
import sheathwright.job.table.RowSource;
import sheathwright.job.table.TableReader;

/**
 * What the covering's maker asks of the deck, from a table that the user fills from the maker's
 * engineering: each against what is there, with its evidence.
 */
final class MakerFields {

  static final Field<Choice<String>> REQUIREMENT = Field.line("requirement", "Requirement");

  static final Field<Choice<MakerUnit>> UNIT = Field.word("unit", "Unit", MakerUnit.class);

  static final Field<Choice<Sense>> SENSE = Field.word("sense", "At least or at most", Sense.class);

  static final Field<Choice<String>> REQUIRED = Field.line("required", "Required");

  static final Field<Choice<String>> FOUND = Field.line("found", "Found");

  static final Field<Choice<String>> EVIDENCE = Field.text("evidence", "Evidence");

  static final List<Field<?>> FIELDS = List.of(REQUIREMENT, UNIT, SENSE, REQUIRED, FOUND, EVIDENCE);

  private static final Limits SENSIBLE = Limits.between(0, 1_000_000, "");

  private MakerFields() {}

  /** The requirements of a table; what cannot be read is said with its line. */
  static List<MakerRequirement> read(TableReader reader, RowSource file, List<Row> rows) {
    List<MakerRequirement> requirements = new ArrayList<>();
    for (Row row : rows) {
      if (FIELDS.stream().allMatch(field -> row.has(field) && row.of(field) != null)) {
        Unit<?> unit = row.of(UNIT).value().unit();
        Figure<?> required = number(reader, file, row, REQUIRED, unit);
        Figure<?> found = number(reader, file, row, FOUND, unit);
        if (required != null && found != null) {
          requirements.add(
              new MakerRequirement(
                  row.of(REQUIREMENT), required, row.of(SENSE), found, row.of(EVIDENCE)));
        }
      }
    }
    return requirements;
  }

  private static Figure<?> number(
      TableReader reader, RowSource file, Row row, Field<Choice<String>> field, Unit<?> unit) {
    Choice<String> text = row.of(field);
    try {
      TypedCell cell = file.typed(field.name(), text.value());
      return Figure.input(field.name(), cell.number(unit, SENSIBLE), unit, SENSIBLE, text.source());
    } catch (RefusedException unreadable) {
      reader.problem(file, row, field, unreadable.getMessage());
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

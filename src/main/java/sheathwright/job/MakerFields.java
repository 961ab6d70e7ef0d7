package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.fastening.uplift.MakerRequirement;
import sheathwright.fastening.uplift.MakerRequirement.Sense;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.life.CellsOfTheJob;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.job.triage.PullFields;

/**
 * What the covering's maker asks of the deck, from a table that the user fills from the maker's
 * engineering: each against what is there, with its evidence.
 */
final class MakerFields {

  static final Field<Choice<MakerUnit>> UNIT = Field.word("unit", "Unit", MakerUnit.class);

  static final Field<Choice<Sense>> SENSE = Field.word("sense", "At least or at most", Sense.class);

  static final Field<Choice<String>> REQUIRED = Field.line("required", "Required");

  static final Field<Choice<String>> FOUND =
      Field.line("found", "Found: a number, or the name of a cell of the job").ifKnown();

  static final Field<Choice<String>> EVIDENCE = Field.text("evidence", "Evidence").ifKnown();

  private static final List<Field<?>> NEEDED =
      List.of(PullFields.REQUIREMENT, UNIT, SENSE, REQUIRED);

  static final List<Field<?>> FIELDS =
      Stream.of(NEEDED, List.of(FOUND, EVIDENCE), PullFields.ASKED)
          .<Field<?>>flatMap(List::stream)
          .toList();

  /** Stands where nobody has shown what is there. */
  private static final String NOT_SHOWN = "not shown yet";

  private static final Limits SENSIBLE = Limits.between(0, 1_000_000, "");

  private MakerFields() {}

  /** The requirements of a table; what cannot be read is said with its line. */
  static List<MakerRequirement> read(ReadTable table) {
    List<MakerRequirement> requirements = new ArrayList<>();
    for (Row row : table.rows()) {
      if (NEEDED.stream().allMatch(field -> row.read(field).isPresent())) {
        Unit<?> unit = row.of(UNIT).value().unit();
        Figure<?> required = number(table, row, REQUIRED, unit);
        boolean isTyped =
            row.has(FOUND) && !CellsOfTheJob.isName(row.of(FOUND).value()); // else said later
        Figure<?> found = isTyped ? number(table, row, FOUND, unit) : Figure.none(NOT_SHOWN, unit);
        if (required != null && found != null) {
          requirements.add(
              new MakerRequirement(
                  row.of(PullFields.REQUIREMENT),
                  required,
                  row.of(SENSE),
                  found,
                  row.read(EVIDENCE).orElse(Choice.literal(""))));
        }
      }
      answeredAfterwards(table, row);
    }
    return requirements;
  }

  /**
   * The requirements of a job, those that are answered by a cell of it with that cell's number.
   *
   * @param refusals takes what names no cell, or one of another kind
   */
  static List<MakerRequirement> answered(Job job, CellsOfTheJob cells, Refusals refusals) {
    List<MakerRequirement> answered = new ArrayList<>();
    for (int i = 0; i < job.maker().size(); i++) {
      MakerRequirement asked = job.maker().get(i);
      Row row = job.lines(JobTable.MAKER).get(i);
      if (row.has(FOUND) && CellsOfTheJob.isName(row.of(FOUND).value())) {
        try {
          Figure<?> cell = cells.answer(row.of(FOUND).value(), asked.required().unit());
          answered.add(
              new MakerRequirement(
                  asked.what(), asked.required(), asked.sense(), cell, asked.evidence()));
        } catch (RefusedException wrong) {
          refusals.add(job.tables().get(JobTable.MAKER).said(row, FOUND, wrong.getMessage()));
        }
      } else {
        answered.add(asked);
      }
    }
    return answered;
  }

  /** Nobody answers before he was asked. */
  private static void answeredAfterwards(ReadTable table, Row row) {
    Optional<Choice<String>> asked = row.read(PullFields.ASKED_ON);
    Optional<Choice<String>> answered = row.read(PullFields.ANSWERED_ON);
    if (asked.isPresent()
        && answered.isPresent()
        && Moment.read(answered.get().value()).isBefore(Moment.read(asked.get().value()))) {
      table.problem(
          row,
          PullFields.ANSWERED_ON,
          "%s is given, but it was asked on %s; give that or a later day"
              .formatted(answered.get().value(), asked.get().value()));
    }
  }

  private static Figure<?> number(
      ReadTable table, Row row, Field<Choice<String>> field, Unit<?> unit) {
    Optional<Choice<String>> text = row.read(field);
    if (text.isEmpty()) {
      return null;
    }
    try {
      return Figure.input(
          field.name(),
          table.typed(row, field).number(unit, SENSIBLE),
          unit,
          SENSIBLE,
          text.get().source());
    } catch (RefusedException unreadable) {
      table.problem(row, field, unreadable.getMessage());
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

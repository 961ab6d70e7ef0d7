package sheathwright.job.life;

import java.util.List;
import java.util.Optional;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.job.life.InspectionFields.Sense;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;

/** What was counted in a zone, and what was inspected, agrees with itself. */
final class ZoneRules {

  private final LifeTables tables;

  ZoneRules(LifeTables tables) {
    this.tables = tables;
  }

  void hold() {
    for (Row zone : tables.zones().rows()) {
      isAtMost(
          zone, ZoneFields.FROM_COURSE, ZoneFields.TO_COURSE, "courses are counted up the slope");
      isAtMost(zone, ZoneFields.SEEN, ZoneFields.PLACES, "no more is seen than is there");
      isAtMost(zone, ZoneFields.SEEN_BAD, ZoneFields.SEEN, "only what was seen is known to be bad");
      if (zone.has(ZoneFields.SEEN_BAD) && !zone.has(ZoneFields.SEEN)) {
        tables
            .zones()
            .problem(
                zone,
                ZoneFields.SEEN,
                "it is empty, but seen_bad is given; say of how many that were seen, such as 12");
      }
    }
    for (Row inspection : tables.inspections().rows()) {
      inspection
          .read(InspectionFields.SENSE)
          .filter(sense -> sense.value() != Sense.IS)
          .ifPresent(sense -> isANumber(inspection, sense));
    }
  }

  private void isAtMost(
      Row zone, Field<Figure<Ratio>> less, Field<Figure<Ratio>> more, String why) {
    Optional<Figure<Ratio>> one = zone.read(less);
    Optional<Figure<Ratio>> other = zone.read(more);
    if (one.isPresent() && other.isPresent() && one.get().value() > other.get().value()) {
      tables
          .zones()
          .problem(
              zone,
              less,
              "%s is given, but %s is %s; %s: give at most that"
                  .formatted(one.get().plain(), more.name(), other.get().plain(), why));
    }
  }

  private void isANumber(Row inspection, Choice<Sense> sense) {
    for (Field<Choice<String>> field : List.of(InspectionFields.REQUIRED, InspectionFields.FOUND)) {
      String given = inspection.read(field).map(Choice::value).orElse("");
      try {
        if (!given.isEmpty()) {
          new TypedCell(field.name(), given).number(Units.RATIO, Limits.NONE);
        }
      } catch (RefusedException noNumber) {
        tables
            .inspections()
            .problem(
                inspection,
                field,
                "\"%s\" is given, but sense is %s, which is for numbers; give a number with its unit in unit, such as 6 and in, or is in sense"
                    .formatted(given, sense.value().word()));
      }
    }
  }
}

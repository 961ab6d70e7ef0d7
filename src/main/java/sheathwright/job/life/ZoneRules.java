package sheathwright.job.life;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.job.life.InspectionFields.Sense;
import sheathwright.job.table.Field;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.job.zone.SeenRules;
import sheathwright.job.zone.ZoneFields;

/** What was counted in a zone, and what was inspected, agrees with itself. */
final class ZoneRules {

  private final LifeTables tables;

  ZoneRules(LifeTables tables) {
    this.tables = tables;
  }

  void hold() {
    ReadTable zones = tables.zones();
    for (Row zone : zones.rows()) {
      zones.atMost(
          zone, ZoneFields.FROM_COURSE, ZoneFields.TO_COURSE, "courses are counted up the slope");
    }
    SeenRules.hold(zones, ZoneFields.PLACES, ZoneFields.SEEN, ZoneFields.SEEN_BAD);
    for (Row inspection : tables.inspections().rows()) {
      inspection
          .read(InspectionFields.SENSE)
          .filter(sense -> sense.value() != Sense.IS)
          .ifPresent(sense -> isANumber(inspection, sense));
    }
  }

  private void isANumber(Row inspection, Choice<Sense> sense) {
    for (Field<Choice<String>> field : List.of(InspectionFields.REQUIRED, InspectionFields.FOUND)) {
      String given = inspection.read(field).map(Choice::value).orElse("");
      try {
        if (!given.isEmpty()) {
          tables.inspections().typed(inspection, field).number(Units.RATIO, Limits.NONE);
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

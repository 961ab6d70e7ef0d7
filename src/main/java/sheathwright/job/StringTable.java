package sheathwright.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;
import sheathwright.leveling.string.StringReading;
import sheathwright.leveling.string.StringReadings;
import sheathwright.leveling.string.SuspicionRules;

/** The drops of one plane below a string, station by station, from a table of their own. */
public final class StringTable {

  static final List<Field<?>> FIELDS =
      List.of(
          PlaceFields.PLANE.ifKnown(),
          PlaceFields.RAFTER,
          PlaceFields.ALONG,
          PlaceFields.UP,
          PlaceFields.DROP);

  private StringTable() {}

  /**
   * The readings in a file with the columns rafter, along_in, up_in and drop_in.
   *
   * @param plane what the plane is called; where the file has a column plane, its lines alone
   * @throws ProblemsException with everything that is wrong with it
   */
  public static StringReadings read(Path file, String plane) {
    TableReader reader = new TableReader();
    List<Row> rows = reader.rows(CsvFile.read(file), FIELDS);
    reader.raiseProblems();
    List<StringReading> readings = new ArrayList<>();
    for (Row row : rows) {
      if (row.has(PlaceFields.PLANE) && !row.of(PlaceFields.PLANE).plain().equals(plane)) {
        continue;
      }
      readings.add(
          StringReading.ofDrop(
              row.of(PlaceFields.RAFTER).plain(),
              row.of(PlaceFields.ALONG),
              row.of(PlaceFields.UP),
              row.of(PlaceFields.DROP_AT_MIDDLE)));
    }
    return StringReadings.of(plane, readings, SuspicionRules.usual());
  }
}

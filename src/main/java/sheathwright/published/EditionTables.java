package sheathwright.published;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import sheathwright.figure.Source;
import sheathwright.figure.Table;

/** Tables that each edition of ASCE 7 prints anew, made into one that the edition's word opens. */
public final class EditionTables {

  private EditionTables() {}

  /**
   * One table of several.
   *
   * @param name begins its ranges in a workbook
   * @param title as it is spoken of
   * @param keys how many leading columns find a row of one edition
   * @param source of the whole, with the least sure mark among the files or words that say which
   *     part is less sure
   * @param files of the editions that print it, below this package's resources
   */
  public static Table table(
      String name, String title, int keys, Source source, Map<LoadEdition, String> files) {
    List<List<String>> rows = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    List<String> allKeys = new ArrayList<>(List.of("edition"));
    List<String> columns = new ArrayList<>();
    new EnumMap<>(files)
        .forEach(
            (edition, file) -> {
              Table printed = Published.table(file, name, title, keys);
              if (columns.isEmpty()) {
                allKeys.addAll(printed.keys());
                columns.addAll(printed.columns());
              }
              notes.addAll(printed.notes());
              printed.rows().forEach(row -> rows.add(opened(edition.word(), row)));
            });
    return new Table(
        name,
        title,
        List.copyOf(allKeys),
        List.copyOf(columns),
        List.copyOf(rows),
        source,
        List.copyOf(notes));
  }

  private static List<String> opened(String word, List<String> row) {
    return Stream.concat(Stream.of(word), row.stream()).toList();
  }
}

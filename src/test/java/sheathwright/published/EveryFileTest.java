package sheathwright.published;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Source;
import sheathwright.figure.Source.Mark;
import sheathwright.figure.Table;

/** Nothing of a file is lost or changed by being read: written out again, it is the file. */
class EveryFileTest {

  private static final Path FOLDER = Path.of("src/main/resources/sheathwright/published");

  private static final Pattern NEEDLESS_QUOTES = Pattern.compile("(?<=^|,)\"([^\",]*)\"(?=,|$)");

  private static final Map<String, Mark> MARKS =
      Map.of(
          "read", Mark.READ,
          "secondary source", Mark.READ_SECOND_HAND,
          "from memory", Mark.FROM_MEMORY);

  static Stream<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(FOLDER)) {
      return all
          .filter(Files::isRegularFile)
          .map(file -> FOLDER.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void table_writtenOutAgain_isTheFile(String file) throws IOException {
    Table table = Published.table(file, "made", "made tables", 1);
    List<String> again = new ArrayList<>(table.notes().stream().map("# "::concat).toList());
    again.add(line(Stream.concat(table.keys().stream(), table.columns().stream())));
    table.rows().forEach(row -> again.add(line(row.stream())));
    assertThat(again)
        .isEqualTo(
            Files.readAllLines(FOLDER.resolve(file)).stream()
                .map(written -> NEEDLESS_QUOTES.matcher(written).replaceAll("$1"))
                .toList());
  }

  @ParameterizedTest
  @MethodSource("files")
  void source_isTheOneThatTheFileNames(String file) throws IOException {
    Source source = Published.table(file, "made", "made tables", 1).source();
    List<String> lines = Files.readAllLines(FOLDER.resolve(file));
    assertThat(lines).contains("# source: " + source.text());
    assertThat(lines.stream().filter(line -> line.startsWith("# mark: ")))
        .singleElement()
        .satisfies(line -> assertThat(MARKS.get(line.substring(8))).isEqualTo(source.mark()));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void theLeadingColumns_areKeys(int keys) {
    Table table = Published.table("nds/2018/table-4a.csv", "lumber", "lumber values", keys);
    List<String> head =
        List.of(
            "species",
            "grade",
            "fb_psi",
            "ft_psi",
            "fv_psi",
            "fc_perp_psi",
            "fc_psi",
            "e_psi",
            "emin_psi");
    assertThat(table.keys()).isEqualTo(head.subList(0, keys));
    assertThat(table.columns()).isEqualTo(head.subList(keys, 9));
    assertThat(table.name()).isEqualTo("lumber");
    assertThat(table.title()).isEqualTo("lumber values");
  }

  private static String line(Stream<String> cells) {
    return cells.map(cell -> cell.contains(",") ? '"' + cell + '"' : cell).collect(joining(","));
  }
}

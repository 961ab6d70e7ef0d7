package sheathwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the pages say of each other and of our workbooks, besides their commands and examples. */
class DocPagesTest {

  private static final int MOST_LINES_OF_README = 120;
  private static final int TEN_MINUTES = 150;
  private static final Pattern LINK = Pattern.compile("]\\(([^)#:]*)(?:#([^)]*))?\\)");
  private static final Pattern NAME = Pattern.compile("`([a-z]\\w*)`");

  private static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
    try (Stream<Path> docs = Files.list(Path.of("docs"))) {
      docs.filter(page -> page.toString().endsWith(".md")).sorted().forEach(pages::add);
    }
    return pages;
  }

  @Test
  void everyLink_leadsSomewhere() throws IOException {
    List<String> lost = new ArrayList<>();
    for (Path page : pages()) {
      String text = Files.readString(page);
      for (MatchResult link : LINK.matcher(text).results().toList()) {
        Path target =
            link.group(1).isEmpty()
                ? page
                : page.toAbsolutePath().resolveSibling(link.group(1)).normalize();
        if (!Files.exists(target) || !hasHeading(target, link.group(2))) {
          lost.add(page + ": " + link.group());
        }
      }
    }
    assertThat(lost).isEmpty();
  }

  private static boolean hasHeading(Path page, String anchor) throws IOException {
    return anchor == null
        || Files.readAllLines(page).stream()
            .filter(line -> line.startsWith("#"))
            .map(line -> line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT).replace(' ', '-'))
            .anyMatch(anchor::equals);
  }

  @Test
  void theReadme_isOnePage() throws IOException {
    assertThat(Files.readAllLines(Path.of("README.md"))).hasSizeLessThan(MOST_LINES_OF_README + 1);
  }

  @ParameterizedTest
  @CsvSource({"office", "scripts", "library"})
  void aGuide_isReadInTenMinutes(String guide) throws IOException {
    assertThat(Files.readAllLines(Path.of("docs", guide + ".md"))).hasSizeLessThan(TEN_MINUTES);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {"the homeowner's quote | quote", "the office's estimate | estimate"})
  void theNames_standInTheWorkbooks(String heading, String book) throws IOException {
    String page = Files.readString(Path.of("docs", "names.md"));
    String section = page.split("## In " + heading)[1].split("\n## ")[0];
    List<String> names =
        section
            .lines()
            .filter(line -> line.startsWith("| `"))
            .map(line -> line.split("\\|")[1])
            .flatMap(cell -> NAME.matcher(cell).results())
            .map(name -> name.group(1))
            .toList();
    assertThat(names).hasSizeGreaterThan(5);
    try (InputStream in =
            Files.newInputStream(Path.of("workbooks", "quince-hollow", book + ".xlsx"));
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      assertThat(names).allSatisfy(name -> assertThat(workbook.getName(name)).as(name).isNotNull());
    }
  }
}

package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.openxml4j.opc.PackageProperties;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.file.Program;
import sheathwright.workbook.page.Samples;

/** The file around the cells: what a strict reader asks of it, and what it says of itself. */
class StrictFileTest {

  private static final Pattern NUMBER = Pattern.compile("<(?:xdr|a):cNvPr id=\"(\\d+)\"");

  static Iterable<String> names() {
    return Samples.names();
  }

  private static Map<String, String> parts(String book) {
    return Samples.parts(Samples.all().get(book));
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyPart_keepsToTheSchema(String name) {
    parts(name)
        .forEach(
            (part, text) -> assertThat(OoxmlSchema.faults(part, text)).as(name + part).isEmpty());
  }

  @Test
  void partsWithoutASchema_areOnlyThoseOfThePackage() {
    for (String name : names()) {
      assertThat(parts(name).keySet())
          .allMatch(
              part ->
                  OoxmlSchema.knows(part)
                      || part.endsWith(".rels")
                      || part.endsWith(".jpeg")
                      || part.equals("[Content_Types].xml")
                      || part.equals("docProps/core.xml")
                      || part.startsWith("customXml/"), // the manifest, whose form is ours
              name);
    }
  }

  @Test
  void aPartOutOfOrder_isFound() {
    String sheet = parts("quince-hollow-quote").get("xl/worksheets/sheet1.xml");
    String dimension = sheet.replaceAll("(?s).*(<dimension [^>]*>).*", "$1");
    String wrong = sheet.replace(dimension, "").replace("</worksheet>", dimension + "</worksheet>");

    assertThat(OoxmlSchema.faults("xl/worksheets/sheet1.xml", wrong))
        .anyMatch(fault -> fault.contains("dimension"));
  }

  @ParameterizedTest
  @MethodSource("names")
  void itHasATheme_andAPlainLookInOurLetters(String name) throws IOException {
    Map<String, String> parts = parts(name);
    assertThat(parts).containsKey("xl/theme/theme1.xml");
    assertThat(parts.get("xl/theme/theme1.xml")).contains("<a:latin typeface=\"Arial\"/>");
    assertThat(parts.get("xl/styles.xml"))
        .containsPattern("</cellXfs>" + OoxmlSchema.NAMED_LOOKS + "(<dxfs|</styleSheet>)")
        .contains("<cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/>");
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
      XSSFFont plain = workbook.getCellStyleAt(0).getFont();
      assertThat(plain.getFontName()).isEqualTo("Arial");
      assertThat(plain.getFontHeightInPoints()).isEqualTo((short) 10);
      assertThat(workbook.getTheme()).isNotNull();
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void shapesOfADrawing_haveNumbersOfTheirOwn(String name) {
    parts(name)
        .forEach(
            (part, text) -> {
              if (part.startsWith("xl/drawings/drawing")) {
                List<String> numbers =
                    NUMBER.matcher(text).results().map(found -> found.group(1)).toList();
                assertThat(numbers).as(part).isNotEmpty().doesNotHaveDuplicates();
              }
            });
  }

  @ParameterizedTest
  @CsvSource({
    "quince-hollow-estimate, 2027-05-04T12:00:00Z, Deck under a new roof at Quince Hollow",
    "quince-hollow-quote, 2027-05-04T12:00:00Z, Deck under a new roof at Quince Hollow",
    "life-change-order, 2027-05-18T12:00:00Z, Change order",
    "life-invoice, 2027-06-02T12:00:00Z, Invoice",
    "life-deck-record, 2027-06-02T12:00:00Z, Deck record",
    "session, '', A session at the prompt",
    "fill-nail_lateral, '', nail_lateral"
  })
  void itSays_whichDocumentItIs_whose_andOfWhichDay(String name, String day, String title)
      throws Exception {
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
      PackageProperties said = workbook.getPackage().getPackageProperties();
      assertThat(said.getTitleProperty().orElseThrow()).contains(title);
      assertThat(said.getSubjectProperty().orElse("")).isNotEmpty();
      assertThat(
              said.getCreatedProperty().map(created -> created.toInstant().toString()).orElse(""))
          .isEqualTo(day);
      assertThat(said.getModifiedProperty()).isEmpty();
      String company =
          workbook.getProperties().getExtendedProperties().getUnderlyingProperties().getCompany();
      assertThat(company == null).isEqualTo(day.isEmpty());
      assertThat(said.getCreatorProperty().orElseThrow())
          .isEqualTo(company == null ? Program.NAME : company);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void rule2_whatWroteIt_standsInItsPropertiesAndUnderEachPage(String name) throws IOException {
    Matcher version =
        Pattern.compile("<artifactId>sheathwright</artifactId>\\s*<version>([^<]+)<")
            .matcher(Files.readString(Path.of("pom.xml")));
    assertThat(version.find()).isTrue();
    String program = "Sheathwright " + version.group(1);
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
      assertThat(
              workbook
                  .getProperties()
                  .getExtendedProperties()
                  .getUnderlyingProperties()
                  .getApplication())
          .isEqualTo(program);
      workbook.forEach(sheet -> assertThat(sheet.getFooter().getLeft()).contains(program));
    }
  }
}

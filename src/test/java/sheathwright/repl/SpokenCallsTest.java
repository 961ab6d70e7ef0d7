package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Calls that are no library functions, said as those are: arguments by name, words where one is
 * due, a spacing for supports; and what Java does not know, mended.
 */
class SpokenCallsTest {

  @TempDir Path folder;

  private final Session session = new Session();

  @AfterEach
  void close() {
    session.close();
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  private String java(String line) {
    answer(line);
    return answer("show java");
  }

  @Test
  void argumentsOfAMethod_standByTheirNamesInAnyOrder() {
    answer("home = house(length = 40 ft, width = 30 ft, pitch = 6 in 12)");
    assertThat(java("big = home.porch(out = 8 ft, side = front, width = 12 ft, at = 4 ft)"))
        .isEqualTo("var big = home.porch(HouseSide.FRONT, ft(4), ft(12), ft(8));");
    assertThat(answer("home.porch(front, at = 4 ft, breadth = 12 ft)"))
        .isEqualTo("porch takes side, at, width, out");
    assertThat(answer("home.porch(front, at = 4 ft, at = 5 ft, width = 1 ft, out = 2 ft)"))
        .isEqualTo("porch takes side, at, width, out");
  }

  @Test
  void aSpacing_standsForRegularSupports_givenOnceOrInTheCall() {
    answer("shed = Plane.rectangle(\"shed\", 12 ft, 8 ft)");
    assertThat(java("layout(shed, 24 in)")).isEqualTo("layout(shed, Supports.every(in(24)));");
    assertThat(java("layout(shed, spacing = 16 in)"))
        .isEqualTo("layout(shed, Supports.every(in(16)));");
    answer("given(spacing = 16 in)");
    assertThat(java("deck = layout(shed)"))
        .isEqualTo("var deck = layout(shed, Supports.every(given_spacing));");
    // 12 ft by 8 ft are three sheets of 32 sq ft, whole and by halves
    assertThat(answer("deck.sheets")).isEqualTo("sheets = 3 sheets");
    assertThat(answer("layout(shed).sheets")).endsWith("given: spacing 16 in");
  }

  @Test
  void marks_areNamedByTheirPlace_anEstimatorsOwnKeyStays() {
    answer("shed = Plane.rectangle(\"shed\", 12 ft, 8 ft)");
    answer(
        "fixes = patches(shed, 24 in, mark(rot, 4 ft, 1 ft, 6 in, 6 in), Mark.of(\"vent\", soft, 9 ft, 5 ft, 6 in, 6 in))");
    assertThat(answer("fixes.marks"))
        .isEqualTo(
            "mark m1, rot, 4' 0\" along and 1' 0\" up, 6 in by 6 in\n"
                + "mark vent, soft, 9' 0\" along and 5' 0\" up, 6 in by 6 in");
    assertThat(answer("mark(rot, 4 ft, 1 ft, 0 in, 6 in)")).startsWith("mark is 0 in by 6 in;");
  }

  @Test
  void wordsOfTheTrade_areKnownInLoopsAndLists() {
    answer("given(grade = #2, spacing = 24 in, dead = 10 psf)");
    assertThat(java("woods = List.of(SPF, HF, DF)"))
        .isEqualTo("var woods = List.of(SPRUCE_PINE_FIR, HEM_FIR, DOUGLAS_FIR_LARCH);");
    assertThat(java("sizes = List.of(2x6, 2x12)"))
        .isEqualTo("var sizes = List.of(SIZE_2X6, SIZE_2X12);");
    assertThat(answer("List.of(XYZ)")).startsWith("there is no \"XYZ\"");
    assertThat(
            java(
                "spans = woods.stream().map(wood -> rafterMaxSpan(species = wood, size = 2x8, snow = 30 psf).governs).toList()"))
        .contains(".governs()).toList()");
  }

  @Test
  void wordsVary_likeFigures() {
    answer("wood = SPF");
    answer(
        "apart = rafterMaxSpan(species = wood, grade = #2, size = 2x8, spacing = 24 in, snow = 30 psf, dead = 10 psf).span");
    String table = answer("vary(apart, wood, SPF, HF, DF)");
    // sqrt(8 F_b 1.2 1.15 1.15 13.14 / 6.667), NDS 2018, Table 4A: 147.97, 145.84, 150.07 in
    assertThat(table.lines().map(line -> line.replaceAll(" +", " ")))
        .containsExactly(
            "wood apart",
            "spruce-pine-fir 147-15/16 in, rounded down",
            "hem-fir 145-13/16 in, rounded down",
            "douglas-fir-larch 150-1/16 in, rounded down");
  }

  @Test
  void aBareNumber_standsWhereThingsAreOnlyCounted() {
    assertThat(answer("sisterStock(sag = 1 in, span = 12 ft, count = 3).pieces"))
        .startsWith("pieces = 3 pieces");
    assertThat(java("cuts = cutSticks(3, 4 ft, stick(8 ft, $6.20))"))
        .isEqualTo("var cuts = cutSticks(pieces(3), ft(4), stick(ft(8), usd(6.20)));");
    assertThat(answer("slopeLength(run = 15, rise = 6 in 12)")).contains("write 15 ft");
  }

  @Test
  void stringLines_readEveryRafter_orSayWhichCannotBeRead() {
    answer("string = stringLines(24 in, 12 ft, \"0 1/2 0\", \"0 5/8 0\", \"0 3/8 0\")");
    assertThat(answer("string")).isEqualTo("9 readings on 3 rafters of plane S, 0 to recheck");
    assertThat(answer("string.readings.get(1).reading.drop")).isEqualTo("1/2 in");
    assertThat(answer("stringLines(24 in, 12 ft, \"0 1/2 0\", \"0 0\")"))
        .startsWith("rafter 2 is \"0 0\"; a string line has 3 drops or more");
  }

  @Test
  void aHouse_isSavedWithEveryMeasureAndWhatItWasMeasuredFrom() throws Exception {
    answer("home = house(length = 50 ft, width = 32 ft, pitch = 5 in 12)");
    answer("home = home.porch(front, at = 14 ft, width = 22 ft, out = 8 ft)");
    answer("body = HouseBody.length(50 ft).width(32 ft)");
    Path file = folder.resolve("house.xlsx");
    assertThat(answer("save \"" + file + "\"")).startsWith("wrote").endsWith("home, body");
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      assertThat(book.getName("home_area_sf")).isNotNull();
      assertThat(book.getName("body_length_ft")).isNotNull();
    }
  }

  @Test
  void aCommandWhoseBracketIsOpen_goesOnInTheNextLine() {
    assertThat(session.isWhole("explain sheetsByArea(1000 sqft,")).isFalse();
    assertThat(answer("explain sheetsByArea(1000 sqft,\n10 %)")).contains("= 35 sheets");
  }

  @Test
  void whatIsCarriedAlong_isIndentedWhole() {
    answer("apart = 24 in");
    answer(
        "span = rafterMaxSpan(size = 2x8, species = SPF, grade = #2, spacing = apart, snow = 30 psf, dead = 10 psf)");
    assertThat(answer("apart = 16 in").lines().skip(1))
        .allMatch(line -> line.startsWith("  "))
        .first()
        .asString()
        .startsWith("  span (was span ");
  }
}

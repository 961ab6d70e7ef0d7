package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;

/**
 * The session behaves like a spreadsheet. Expected numbers are worked out by hand: 32 sq ft is one
 * sheet.
 */
class SessionTest {

  private final Session session = new Session();

  @AfterEach
  void close() {
    session.close();
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  @Test
  void aChain_isCarriedAlongInOrder() {
    answer("area = sqft(64)");
    answer("order = sheetsByArea(area, pct(0))");
    answer("twice = order.plus(order)");

    assertThat(answer("area = sqft(96)"))
        .isEqualTo(
            """
            area = 96 sq ft
              order = 3 sheets (was 2 sheets)
              twice = 6 sheets (was 4 sheets)""");
  }

  @Test
  void aThingMadeOfThings_isATableOfItsPartsAndColumns() {
    assertThat(
            answer(
                "Member.of(Lumber.of(HEM_FIR, NO_2, SIZE_2X6, NDS2018))"
                    + ".service(ServiceConditions.of(GETS_WET_LATER))"))
        .isEqualTo(
            """
            lumber().species()       hem-fir         species
            lumber().grade()         no-2            grade
            lumber().size()          2x6             size
            lumber().valueSet()      nds2018         value_set
            actual().stock()         dressed         stock
            actual().thickness()     0 in            thickness_in
            actual().depth()         0 in            depth_in
            service().moisture()     gets-wet-later  moisture
            service().temperature()  70              temperature_f
            incised()                no              incised""");
    assertThat(answer("SisterLoad.of(SpanLoad.span(ft(10)).live(psf(20)))"))
        .startsWith(
            """
            load().span()                      10' 0"  span_ft
            load().load().passing().spacing()  refused: spacing_in is missing; give from 4
                                               to 48 inches, center to center; 16 and 24
                                               are usual
            load().load().passing().live()     20 psf  live_psf
            """);
  }

  @Test
  void aMemberOfTheSameName_isNotCarriedAlong() {
    answer("load = UniformLoad.spacing(in(16)).live(psf(20)).dead(psf(10))");
    answer("rafter = load.spacing().plus(in(1))");
    assertThat(answer("spacing = in(24)")).isEqualTo("spacing = 24 in");
  }

  @Test
  void aVariableDefinedBeforeWhatItIsMadeFromLater_followsToo() {
    answer("a = sqft(32)");
    answer("b = sheetsByArea(a, pct(0))");
    answer("c = sqft(320)");
    answer("a = c.plus(sqft(0))");

    assertThat(answer("c = sqft(64)"))
        .isEqualTo("c = 64 sq ft\n  a = 64 sq ft (was 320 sq ft)\n  b = 2 sheets (was 10 sheets)");
  }

  @Test
  void aVariable_mayChangeItsKind() {
    answer("x = sqft(64)");
    assertThat(answer("x = in(3)")).isEqualTo("x = 3 in");
  }

  @Test
  void dependentsThatNoLongerCompile_areMarkedAndComeBack() {
    answer("x = sqft(64)");
    answer("n = sheetsByArea(x, pct(0))");

    assertThat(answer("x = in(3)"))
        .isEqualTo(
            "x = 3 in\n  n stays 2 sheets, stale: deck area is x, 3 in; it must be a number of sq ft");
    assertThat(answer("x = sqft(96)")).contains("n = 3 sheets");
  }

  @Test
  void aRefusalOnTheWay_isShownAndNothingIsLost() {
    answer("x = sqft(64)");
    answer("n = sheetsByArea(x, pct(0))");
    answer("m = n.plus(sheets(1))");

    assertThat(answer("x = sqft(0)"))
        .contains("n has no value: deck_area_sf is 0; it must be from 1 to 200000")
        .contains("m has no value: deck_area_sf is 0");
    assertThat(answer("x = sqft(32)")).contains("n = 1 sheet").contains("m = 2 sheets");
  }

  @Test
  void aVariableMadeFromItself_isNotCountedUpTwice() {
    answer("step = sheets(1)");
    answer("total = sheets(10)");
    assertThat(answer("total = total.plus(step)")).isEqualTo("total = 11 sheets");
    assertThat(answer("step = sheets(5)")).isEqualTo("step = 5 sheets");
    assertThat(answer("total")).isEqualTo("11 sheets");
  }

  @Test
  void aMethodOfTheUsers_carriesItsCallersAlong() {
    answer(
        "Figure<Quantity.Sheets> needed(Figure<Quantity.Area> a) { return sheetsByArea(a, pct(0)); }");
    assertThat(answer("n = needed(sqft(64))")).isEqualTo("n = 2 sheets");
    assertThat(
            answer(
                "Figure<Quantity.Sheets> needed(Figure<Quantity.Area> a) { return sheetsByArea(a, pct(100)); }"))
        .contains("n = 4 sheets (was 2 sheets)");
  }

  @Test
  void endingTheProgram_endsOnlyTheLine() {
    assertThat(answer("System.exit(4)")).startsWith("the line ended with status 4");
    assertThat(answer("Runtime.getRuntime().halt(4)")).startsWith("the line ended with status 4");
    assertThat(answer("sheets(2)")).isEqualTo("2 sheets");
  }

  @Test
  void noAnswer_showsTheInsidesOfTheShell() {
    for (String wrong :
        List.of(
            "sheetsByArea(1)",
            "in(\"x\")",
            "sheets(1).plus(in(2))",
            "int x = \"a\";",
            "foo bar",
            "((",
            "null.toString()",
            "Object o = null; o.toString()",
            "List.of(1).get(3)")) {
      assertThat(answer(wrong))
          .as(wrong)
          .isNotBlank()
          .doesNotContain("\tat ", "REPL.", "$JShell", "do_it$", "SnippetEvent", "Exception");
    }
  }

  @Test
  void differentKinds_areRefusedWithBothNamed() {
    assertThat(answer("sheets(1).plus(in(2))"))
        .isEqualTo("2 in cannot be added to 1 sheet: they do not measure the same thing");
  }

  @Test
  void helpRanks_andShowsAnExampleEach() {
    assertThat(answer("help(\"nails per sheet\")"))
        .startsWith("nails_per_sheet")
        .contains("nailsPerSheet(in(16), Nailing.edge(in(6)).field(in(12)), FOUR_BY_EIGHT) //");
  }

  @Test
  void variables_areHeldAsLiveObjects() {
    answer("order = sheetsByArea(sqft(64), pct(0))");
    answer("int plain = 3;");
    assertThat(session.variables().keySet()).isEqualTo(Set.of("order", "plain"));
    assertThat(((Figure<?>) session.variables().get("order")).value()).isEqualTo(2);
  }

  @Test
  void aLengthWithoutQuotes_isNotTakenAsASubtraction() {
    assertThat(answer("eave = ft(42-6)"))
        .isEqualTo(
            "ft(42-6) is arithmetic in Java, not a length; as it is spoken it stands in quotes: ft(\"42-6\")");
    assertThat(answer("in(1-3/8)")).contains("in(\"1-3/8\")");
    assertThat(answer("ft(42)")).isEqualTo("42' 0\"");
  }

  @Test
  void aDeclaredType_isKept() {
    answer("int x = 3");
    answer("y = x + 1");
    assertThat(answer("x = 4")).isEqualTo("x = 4\n  y = 5 (was 4)");
    assertThat(answer("x = \"four\""))
        .startsWith("a text in quotes stands where a number without a unit is due");
  }

  @Test
  void aLostValue_saysWhatItStaysAt() {
    answer("a = 3");
    answer("b = a * 2");
    assertThat(answer("a = \"three\""))
        .contains("b stays 6, stale: a text in quotes and a number without a unit");
    assertThat(answer("a = 5")).isEqualTo("a = 5\n  b = 10 (was 6)");
  }
}

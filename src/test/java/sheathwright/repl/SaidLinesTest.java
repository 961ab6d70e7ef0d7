package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines as an estimator says them, in a whole session; expected numbers are worked out by hand. */
class SaidLinesTest {

  private final Session session = new Session();

  @AfterEach
  void close() {
    session.close();
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "pitch(5/12) | 0.4167 in 12",
        "3/8 | 0.375",
        "ft(41 + 7/12) | 41' 7\"",
        "in(1 3/8) | 1-3/8 in",
        "16-9 1/4 ft | 16' 9-1/4\"",
        "12 ft | 12' 0\"",
        "1000 sqft * 1.1 | 1,100 sq ft",
        "24 in + 1 ft | 36 in",
      })
  void whatWasWrongOrRefused_isAnsweredNow(String said, String answer) {
    assertThat(answer(said)).isEqualTo(answer);
  }

  @ParameterizedTest
  @ValueSource(strings = {"nailsPerSheet", "nails_per_sheet", " nailsPerSheet ; "})
  void aFunctionsNameAlone_whereNobodyCanBeAsked_isItsLineOfHelp(String name) {
    assertThat(answer(name))
        .startsWith("nailsPerSheet  How many nails hold one whole sheet")
        .contains("nailsPerSheet(in(16), ");
    assertThat(session.form(name)).isPresent();
  }

  /** Not of its argument's name, which is known to nobody else either. */
  @Test
  void aMisspelledFunction_isSaid_withTheNearest() {
    assertThat(answer("strutedSpan(14 ft, strut = 8 ft)"))
        .startsWith("there is no \"strutedSpan\"; the nearest is struttedSpan");
    assertThat(answer("orderSheets(sheets = 60 sheets)"))
        .startsWith("there is no \"orderSheets\"; the nearest ");
  }

  /** A short word is near to everything: nothing is named that shares no half of it. */
  @Test
  void aWordThatNothingIsNearTo_isSaid_withWhereToLook() {
    assertThat(answer("show bad"))
        .isEqualTo("there is no \"bad\"; help bad finds what speaks of it");
    assertThat(answer("xqzv")).isEqualTo("there is no \"xqzv\"; help tells what can be typed");
  }

  @Test
  void aFunctionsName_isNotTakenFromAVariable() {
    answer("house = 3");
    assertThat(session.form("house")).isEmpty();
    assertThat(answer("house")).isEqualTo("3");
    assertThat(answer("x = nailsPerSheet"))
        .isEqualTo(
            "nailsPerSheet is a function and needs brackets with what it takes; nailsPerSheet alone on a line asks for it");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plywood | plywood could be PLYWOOD_DECK or PLYWOOD: write which, or use it where one of them is due",
        "Snow | Snow could be DURATION_SNOW or SNOW: write which, or use it where one of them is due",
        "kind = plywood | plywood could be PLYWOOD_DECK or PLYWOOD: write which, or use it where one of them is due",
        "PLYWOOD | plywood",
        "spf | spruce-pine-fir",
      })
  void aWordThatTwoKindsHave_isRefused_andOneOfOneKindIsTakenInAnyCase(String said, String answer) {
    assertThat(answer(said)).isEqualTo(answer);
  }

  @Test
  void aPitchAsAFraction_isRefusedWithTheWayToSayIt() {
    assertThat(answer("slopeFactor(5/12)")).isEqualTo("rise is 5/12 without a unit; write 5 in 12");
    assertThat(answer("slopeFactor(5:12)"))
        .isEqualTo("a pitch is said with in: slopeFactor(5 in 12)");
  }

  @Test
  void aThingOfManyParts_isOneLineInTheList() {
    answer("south = Plane.rectangle(\"S\", 42 ft, 16.5 ft)");
    answer("rafters = Supports.every(24 in)");
    answer("deck = layout(south, rafters)");
    assertThat(answer("list")).contains("deck = sheets 22 sheets …   from rafters, south");
  }

  @Test
  void aSentence_isAWholeLine_andAnswered() {
    assertThat(session.isComplete("area 1400 sqft")).isTrue();
    assertThat(answer("area 1400 sqft"))
        .isEqualTo("a name is given a value with =: area = 1400 sqft");
    assertThat(session.isComplete("how many nails?")).isTrue();
    assertThat(answer("how many nails?")).contains("help nails tells");
    assertThat(answer("help nails")).contains("nailsPerSheet");
  }

  @Test
  void aFact_isCalledTheSameEverywhere() {
    answer("given(spacing = 24 in, species = SPF)");
    answer("nails = nailsPerSheet(edge = 6 in)");
    assertThat(answer("list"))
        .isEqualTo(
            """
            given spacing = 24 in
            given species = spruce-pine-fir
            nails = 33 nails/sheet   from given spacing""");
    assertThat(answer("explain given spacing")).startsWith("given spacing = 24 in  ");
    assertThat(answer("delete given"))
        .isEqualTo(
            "there is no \"given\" to delete; there are given spacing, given species, nails");
    assertThat(answer("delete given spacing"))
        .isEqualTo("given spacing is deleted; made from it, and kept with the value it has: nails");
    assertThat(answer("list")).endsWith("stale: made from given spacing, which is deleted");
    assertThat(answer("undo")).contains("  given spacing = 24 in\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "order * $41.25 | $41.25 is money, and not the price of each sheet; write $41.25/sheet",
        "$1041.25 * order | $1041.25 is money, and not the price of each sheet; write $1041.25/sheet",
        "order * price | price is money, and not the price of each sheet; write price = $1041.25/sheet",
        "1400 sqft * $3 | $3 is money, and not the price of each sq ft; write $3.00/sqft",
        // 49 × 41.25
        "order * $41.25/sheet | $2,021.25",
        "1400 sqft * $3.00/sqft | $4,200.00",
        "price * 2 | $2,082.50",
      })
  void soManyTimesMoney_isAskedForThePriceOfEach(String said, String answer) {
    answer("order = 49 sheets");
    answer("price = $1041.25");
    assertThat(answer(said)).isEqualTo(answer);
  }

  @Test
  void aFactGivenAnew_isCarriedAlong() {
    answer("given(spacing = 24 in)");
    answer("clear = 12 ft");
    // 16 in is two thirds of 24 in, and the thrust goes with the spacing
    answer("push = rafterThrust(span = clear, rise = 4 in 12, load = 30 psf)");
    assertThat(answer("push")).isEqualTo("thrust = 1,080 lb");
    assertThat(answer("given(spacing = 16 in)")).contains("push = 720 lb (was 1,080 lb)");
  }

  @Test
  void operatorsStayTraced_andFollow() {
    answer("deck = 1000 sqft");
    answer("more = deck * 1.1");
    assertThat(answer("deck = 2000 sqft")).contains("more = 2,200 sq ft (was 1,100 sq ft)");
    assertThat(answer("explain(more)")).contains("2,000 sq ft × 1.1");
  }

  @Test
  void javaLines_takeOperatorsConditionsAndNamesAsWell() {
    answer("deck = 1000 sqft");
    answer("double smallest = 0");
    answer("if (deck < 2000 sqft && !(deck < 3 sqft)) smallest = (deck * 2).value()");
    assertThat(answer("smallest")).isEqualTo("2000.0");
    answer("var spans = new java.util.ArrayList<String>()");
    answer(
        "for (var size : List.of(SIZE_2X6, SIZE_2X12)) spans.add(rafterCheck(size = size, species = SPF, grade = #2, spacing = 24 in, snow = 30 psf, dead = 10 psf, span = 11-6 ft).ok().toString())");
    assertThat(answer("spans")).isEqualTo("\"no\"\n\"yes\"");
    answer(
        "rafter = rafterCheck(size = 2x12, species = SPF, grade = #2, spacing = 24 in, snow = 30 psf, dead = 10 psf, span = 11-6 ft)");
    answer("if (holds(rafter)) smallest = 5");
    assertThat(answer("smallest")).isEqualTo("5.0");
    assertThat(answer("if (deck + 3 > deck) smallest = 6"))
        .startsWith("3 has no unit and cannot stand beside deck");
    assertThat(answer("if (deck == deck) smallest = 7"))
        .startsWith("== compares to the last digit");
  }

  @Test
  void textsWithUnitsInside_stayAsTheyAre() {
    assertThat(answer("String said = \"24 in 5' #2 f(size = 2x6)\""))
        .isEqualTo("said = \"24 in 5' #2 f(size = 2x6)\"");
  }

  @Test
  void aMethodOfTheUsers_seesWhatWasGivenWithoutTheCompiler() {
    answer("deck = 1000 sqft");
    answer("Figure<?> twice() { return deck.plus(deck); }");
    assertThat(answer("twice()")).isEqualTo("2,000 sq ft");
    answer("deck = 500 sqft");
    assertThat(answer("twice()")).isEqualTo("1,000 sq ft");
  }

  @Test
  void aFunctionOfTheUsers_comesBeforeTheLibrarys() {
    answer("int slopeFactor(int n) { return n + 1; }");
    assertThat(answer("slopeFactor(1)")).isEqualTo("2");
  }

  /** Lines of a script are compiled together; one that Java would read otherwise is not. */
  @Test
  void aScript_readsItsLinesAsThePromptDoes() {
    List<String> answers = new ArrayList<>();
    List<String> script =
        List.of(
            "given(spacing = 24 in)",
            "places = new java.util.ArrayList<String>()",
            "places.add(\"eave\")",
            "rise = pitch(6/12)",
            "run = 12 ft",
            "nailsPerSheet(edge = 6 in, field = 12 in)",
            "slopeFactor(rise)",
            "run * 2");
    session.answers(script, (line, answer) -> answers.add(answer.text()));
    assertThat(answers.get(3)).isEqualTo("rise = 0.5 in 12");
    assertThat(answers.get(5)).contains("given: support spacing 24 in");
    assertThat(answers.get(7)).isEqualTo("24' 0\"");
  }

  @Test
  void whatIsCarriedAlong_isNotTheLineThatWasTyped() {
    answer("deck = 1000 sqft");
    answer("more = deck * 2");
    answer("deck = 10 sqft");
    assertThat(answer("show java")).isEqualTo("var deck = sqft(10);");
  }
}

package sheathwright.repl;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.repl.tab.Suggestions.Offer;

/**
 * What explain tells when more is asked of it, in 80 columns. By hand: 1,408 × 1.1 ÷ 32 = 48.4, so
 * 49 sheets; 49 × 41.25 = 2,021.25, twice that and 3 more 4,045.50.
 */
class ExplainTest {

  private final Session session = new Session();

  @AfterEach
  void close() {
    session.close();
  }

  @BeforeEach
  void order() {
    answer("order = sheetsByArea(1408 sqft, 10 %)");
    answer("total = order * $41.25/sheet");
    answer("twice = total * 2 + $3");
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  @ParameterizedTest
  @ValueSource(strings = {"explain total", "explain(total)", "explain (total)", "explain total;"})
  void anAnswerWithoutANameOfItsOwn_isCalledByItsVariable(String typed) {
    assertThat(answer(typed))
        .isEqualTo(
            """
            total = sheets × $41.25/sheet
                  = 49 sheets × $41.25/sheet
                  = $2,021.25
            made from
              sheets = 49 sheets, worked out
            all 2 steps: explain all total""");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"explain twice depth 2", "explain(twice, depth 2)", "explain(twice) depth 2"})
  void toADepth_theStepsBeforeAreTold_eachOnce(String typed) {
    assertThat(answer(typed))
        .isEqualTo(
            """
            twice = sheets × $41.25/sheet × 2 + $3.00
                  = 49 sheets × $41.25/sheet × 2 + $3.00
                  = $4,045.50
            made from
              sheets = ⌈deck area × (1 + waste) ÷ sheet area⌉
                     = ⌈1,408 sq ft × (1 + 10 %) ÷ 32 sq ft/sheet⌉
                     = 49 sheets                                  common practice, no source
              made from
                deck area = 1,408 sq ft, given
                waste = 10 %, given
                sheet area = 32 sq ft/sheet, 4 ft by 8 ft (derived)
            all 2 steps: explain all twice""");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "explain all total plain",
        "explainAll total plain",
        "explainAll(total, plain)",
        "explain(all total) plain"
      })
  void plain_theNumbersPutInStandWithoutUnits(String typed) {
    assertThat(answer(typed))
        .startsWith(
            """
            sheets = ⌈deck area × (1 + waste) ÷ sheet area⌉
                   = ⌈1408 × (1 + 0.1) ÷ 32⌉
                   = 49 sheets                                    common practice, no source
            total = sheets × $41.25/sheet
                  = 49 × 41.25
                  = $2,021.25
            checked: sheets_by_area:\s""")
        .contains(" certified cases (", "all hold");
  }

  @Test
  void plain_aChangeOfUnitIsAFactor() {
    answer("wide = 24 in * 16 ft");
    // 24 in by 16 ft are 32 sq ft: 24 × 16 ÷ 12
    assertThat(answer("wide")).isEqualTo("32 sq ft");
    assertThat(answer("explain wide plain"))
        .isEqualTo(
            """
            wide = 24 in × 16' 0"
                 = 24 × 16 ÷ 12
                 = 32 sq ft""");
  }

  @Test
  void untaken_theOtherBranchOfAChoiceIsTold() {
    answer("apart = practicalNailSpacing(3.2 in)");
    assertThat(answer("explain apart depth 2 untaken"))
        .isEqualTo(
            """
            nail spacing = next below
                         = 3 in                                   common practice, no source
            made from
              allowed spacing = the lesser of spacing and most
                              = the lesser of 3.2 in and 12 in
                              = 3.2 in
              made from
                spacing = 3.2 in, given
                most = 12 in, given
              3 in = 3 in, common practice, no source
              next below = under 12
                         = 3 in
                           since it is not so that allowed spacing ≥ 12 in (3.2 in ≥ 12 in):
                             the other branch is not taken
                           not taken: 12 in
              made from
                allowed spacing = 3.2 in, worked out
                12 in = 12 in, common practice, no source
                under 12 = 3 in, worked out
            all 5 steps: explain all apart""");
    assertThat(answer("explain all apart untaken"))
        .contains("under 6 = 3 in\n", "          not taken: 4 in\n");
    assertThat(answer("explain total untaken"))
        .endsWith(
            """
            nothing was chosen in what is told here
            all 2 steps: explain all total""");
  }

  @Test
  void aCheck_isASmallTree_itsVerdictFirst() {
    answer(
        "r = rafterCheck(size = 2x6, species = SPF, grade = #2, spacing = 24 in, snow = 30 psf, dead = 10 psf, span = 11-6 ft)");
    // w = 40 psf × 2 ft = 80 lb/ft; M = 80 × 11.5² ÷ 8 × 12 = 15,870; S = 1.5 × 5.5² ÷ 6 = 7.5625
    assertThat(answer("explain r.bending plain"))
        .isEqualTo(
            """
            NOT ok: bending
            ├─ demand:
            │  bending stress = M ÷ S
            │                 = 15870 ÷ 7.5625
            │                 = 2,098.5 psi               NDS 2018, 3.3.2 (secondary source)
            ├─ capacity:
            │  F_b' = F_b × C_D × C_F × C_r
            │       = 875 × 1.15 × 1.3 × 1.15
            │       = 1,504.3 psi                   NDS 2018, Table 4.3.1 (secondary source)
            └─ ratio: demand ÷ capacity = 1.395, at most 1 is allowed
            all 13 steps: explain all r.bending""");
    assertThat(answer("explain r.bending depth 2"))
        .contains(
            "│  made from\n│    M = 15,870 in-lb, worked out\n│    S = 7.563 in³, worked out\n");
    assertThat(answer("explain r depth 3")).contains("│    M = w × L^2 ÷ 8\n");
    assertThat(answer("explain r depth 3").lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "explain total depth 0 | depth is 0; it must be a whole number from 1: explain total depth 2",
        "explain total depth | depth is given no number; it must be a whole number from 1: explain total depth 2",
        "explain total deep | \"deep\" is nothing that can stand behind explain total; what can: depth 2, plain, untaken",
      })
  void whatCannotStandThere_isSaidWithWhatCan(String typed, String said) {
    assertThat(answer(typed)).isEqualTo(said);
  }

  @Test
  void aVariableOfSuchAName_isExplained() {
    answer("plain = 2 ft");
    assertThat(answer("explain plain")).startsWith("plain = 2' 0\"");
    assertThat(answer("explain all plain")).startsWith("plain = 2' 0\"");
  }

  @Test
  void helpTellsTheWords() {
    assertThat(answer("help explain"))
        .isEqualTo(
            """
            explain order: where it comes from, the last step
            explain all order: every step
            explain order depth 2: the last two steps, one after the other
            explain order plain: the numbers put in without units, to be checked by hand
            explain order untaken: what a choice did not take, too
            explain check: demand and capacity as a small tree
            with brackets as well: explain(order), explain(order, depth 2), explain(order)
              plain""");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'explain ' | all, order, total, twice",
        "'explain(' | all, order, total, twice",
        "'explain all ' | order, total, twice",
        "'explain order ' | depth, plain, untaken",
        "'explain(order, ' | depth, plain, untaken",
        "'explain all order plain ' | depth, untaken",
        "'order = ' | ''",
      })
  void tabOffersTheWords(String before, String offers) {
    assertThat(
            ExplainWords.offers(before, session.variables().keySet()).stream()
                .map(Offer::text)
                .collect(joining(", ")))
        .isEqualTo(offers);
  }
}

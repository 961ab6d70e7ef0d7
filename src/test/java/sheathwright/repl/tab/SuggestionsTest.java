package sheathwright.repl.tab;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.psf;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sheathwright.fastening.count.Nailing;
import sheathwright.figure.YesNo;
import sheathwright.repl.tab.Suggestions.Offer;

/** Tab offers what fits the parameter that is due, and nothing else. */
class SuggestionsTest {

  private static final Map<String, Object> HELD =
      Map.of(
          "gap", in(24),
          "snow", psf(30),
          "pattern", Nailing.edge(in(6)),
          "sound", YesNo.YES);

  private static Suggestions after(String text) {
    return Suggestions.after(text, HELD, typed -> List.of(), asked -> List.of("everythingElse"));
  }

  private static List<String> offers(String text) {
    return after(text).offers().stream().map(Offer::text).toList();
  }

  @Test
  void aLength_isOfferedLengthsOnly() {
    assertThat(offers("nailsPerSheet("))
        .contains("gap", "in(", "ft(")
        .doesNotContain("snow", "pattern", "psf(", "everythingElse");
  }

  @Test
  void aThing_isOfferedThingsOfItsKindAndHowToMakeOne() {
    assertThat(offers("nailsPerSheet(in(16), "))
        .contains("pattern", "Nailing.edge(")
        .doesNotContain("gap", "in(");
    assertThat(offers("nailsPerSheet(in(16), pattern, ")).contains("FOUR_BY_EIGHT");
  }

  @Test
  void theWholeCall_isShownWithTheDueOneMarked() {
    assertThat(after("x = nailsPerSheet(in(16), ").said())
        .isEqualTo(
            "nailsPerSheet(supportSpacing, >nailing<, sheet)\n  nailing: how far apart its nails stand");
    assertThat(after("nailsPerSheet(plus(in(1), in(2)), ").said()).contains(">nailing<");
    assertThat(after("help(\"nailsPerSheet(\") + nailsPerSheet(").said())
        .contains(">supportSpacing<");
  }

  @Test
  void columns_areOfferedAsNamesUntilTheyAreNamed() {
    assertThat(offers("nailsPerSheet(")).contains("edge_spacing = ");
    for (String edge : List.of("edge_spacing_in", "edge", "edgeSpacing")) {
      assertThat(offers("nailsPerSheet(" + edge + " = in(6), "))
          .contains("field_spacing = ")
          .doesNotContain("edge_spacing = ", "gap");
    }
  }

  @Test
  void aShortName_isCompletedAsItIsBegun() {
    assertThat(offers("nailsPerSheet(ed")).containsExactly("edge = ", "edges = ");
    assertThat(offers("nailsPerSheet(edgeS")).containsExactly("edgeSpacing = ");
    assertThat(offers("nailsPerSheet(edge_")).containsExactly("edge_spacing = ");
    assertThat(offers("nailsPerSheet(edge_spacing_")).containsExactly("edge_spacing_in = ");
  }

  @Test
  void aNameThatTwoParametersCouldHave_isOfferedForNeither() {
    assertThat(offers("nailsPerSheet(sheet")).contains("sheet_length = ", "sheet_width = ");
    assertThat(offers("nailsPerSheet(sheet")).doesNotContain("sheet = ");
  }

  @Test
  void behindAName_itsOwnValuesAreOffered() {
    assertThat(offers("nailsPerSheet(blocked_edges = ")).containsExactly("sound", "yes", "no");
    assertThat(offers("nailsPerSheet(edge_spacing_in = ")).contains("gap", "in(");
    assertThat(after("nailsPerSheet(edge_spacing_in = ").said())
        .startsWith("nailsPerSheet(spacing, >edge_spacing<, field_spacing, ")
        .contains("nail to nail along the panel's edges");
  }

  @Test
  void behindAName_theNextThatHasToBeGivenIsMarked() {
    assertThat(after("nailsPerSheet(edge = in(6), ").said())
        .startsWith("nailsPerSheet(>spacing<, edge_spacing, field_spacing, ");
  }

  @Test
  void behindAnUnknownCall_onlyWhatTheSessionHolds() {
    assertThat(offers("foo(")).containsExactlyInAnyOrder("gap", "snow", "pattern", "sound");
  }

  @Test
  void aMember_isLeftToJava() {
    assertThat(offers("nailsPerSheet(in(16), Nailing.edge(in(6)).fi"))
        .containsExactly("everythingElse");
  }

  @Test
  void aCommand_isOfferedWhatItCanGoOnWith() {
    assertThat(
            Suggestions.after(
                    "explain gap de",
                    HELD,
                    typed ->
                        typed.equals("explain gap ")
                            ? List.of(new Offer("depth", ""), new Offer("plain", ""))
                            : List.of(),
                    asked -> List.of("everythingElse"))
                .offers())
        .containsExactly(new Offer("depth", ""));
  }

  @Test
  void anEmptyLine_isOfferedCommandsAndVariables() {
    assertThat(offers("")).contains("help(", "explain(", "seek ", "scenario ", "gap").hasSize(12);
  }
}

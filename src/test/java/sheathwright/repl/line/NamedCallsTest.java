package sheathwright.repl.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;

/** Arguments by name, presets, facts given once, and words as they are spoken. */
class NamedCallsTest {

  private final Standing session = new Standing();

  private String java(String line) {
    return session.read(line).java();
  }

  /** The rafter of the guide, written out as Java would have it. */
  private static final String RAFTER =
      "rafterCheck(new Lumber(SPRUCE_PINE_FIR, NO_2, SIZE_2X6, NDS2018),"
          + " new UniformLoad(new LiveLoad(in(24), psf(30)), psf(10)), SNOW, number(180),"
          + " new ClearSpan(ft(\"11-6\"), in(1.5)));";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "rafterCheck(size = 2x6, species = SPF, grade = #2, spacing = 24 in, snow = 30 psf, dead = 10 psf, span = 11-6 ft)",
        "rafter_check(span = 11-6 ft, dead = 10 psf, snow = 30 psf, support = 24 in, grade = no-2, species = spf, size = 2X6)",
        "rafterCheck(spanFt = 11-6 ft, dead_psf = 10 psf, live = 30 psf, load = snow, spacing_in = 24in, grade = NO_2, species = \"SPF\", size = SIZE_2X6)",
        "rafterCheck(lumber = Lumber.of(SPF, #2, 2x6, nds2018), spacing = 24 in, snow = 30 psf, dead = 10 psf, span = 11-6 ft)",
      })
  void aRafter_isSaidInManyWays(String said) {
    assertThat(java(said).replace("Lumber.of(", "new Lumber(")).isEqualTo(RAFTER);
    assertThat(session.made(said).notes().get(0))
        .startsWith("assumed: ")
        .contains("bearing 1-1/2 in");
  }

  @Test
  void whatWasLeftOut_isListedAsAssumed() {
    assertThat(
            session
                .made(
                    "rafterCheck(size = 2x6, species = SPF, grade = #2, spacing = 24 in, live = 20 psf, dead = 10 psf, span = 11-6 ft)")
                .notes())
        .containsExactly(
            "assumed: value set nds2018, load roof-live, deflection limit 180, bearing",
            "  1-1/2 in");
  }

  /** What a life may hang on has no preset: the worst is taken, and said. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "panelHoldingGravity(ring) | assumed: moisture stays-wet",
        "nailsAlongSister(0.5, SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)), nail_spacing = 9 in, lateral = 135.7 lb) | assumed: sister bears no"
      })
  void whatNobodySpeaksOf_isTakenAsTheWorst(String said, String assumed) {
    assertThat(session.made(said).notes()).containsExactly(assumed);
  }

  @Test
  void southernPine_takesTheValuesOfItsTime() {
    assertThat(
            java(
                "rafterMaxSpan(size = 2x6, species = SYP, grade = #2, spacing = 24 in, live = 20 psf, dead = 10 psf)"))
        .contains("new Lumber(SOUTHERN_PINE, NO_2, SIZE_2X6, SOUTHERN_PINE_2012)");
  }

  /**
   * A word that only one parameter has is that one's, before it, behind it, or out of its place.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "rafterCheck(2x6, SPF, #2, spacing = 24 in, snow = 30 psf, dead = 10 psf, span = 11-6 ft)",
        "rafterCheck(SPF, grade = #2, size = 2x6, spacing = 24 in, snow = 30 psf, dead = 10 psf, span = 11-6 ft)",
        "rafterCheck(24 in, size = 2x6, species = SPF, grade = #2, snow = 30 psf, dead = 10 psf, span = 11-6 ft)",
        "rafterCheck(spacing = 24 in, 2x6, #2, spf, snow = 30 psf, dead = 10 psf, span = 11-6 ft)",
      })
  void aWord_isForTheOneParameterThatHasIt(String said) {
    assertThat(java(said)).isEqualTo(RAFTER);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sheetAction(finding = rot, probe = 3/8 in)",
        "sheetAction(rot, probe = 3/8 in)",
        "sheetAction(probe = 3/8 in, rot)",
        "sheetAction(rot, 3/8 in)",
      })
  void aThingPartlyNamed_takesTheRestByPlace(String said) {
    assertThat(java(said)).contains("new SheetEvidence(ROT, in(\"3/8\"),");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sheetAction(yes, probe = 3/8 in) | yes is not due here; write edge_support = yes or edge_needed = yes or framing_stops = yes or over_build_up = yes",
        "sheetAction(rto, probe = 3/8 in) | finding is \"rto\", which is not defined; it must be one of rot, delaminated,",
        "rafterCheck(2x6, 24 in, span = 9 ft) | 24 in stands behind 2x6, which is not at its place; name it as well: species, grade,",
        "rafterCheck(span = 9 ft, 24 in) | 24 in stands behind a named argument; name it as well: species, grade,",
      })
  void aWordThatCouldBeSeveral_andAPlaceThatIsLost_areRefused(String said, String message) {
    assertThatThrownBy(() -> java(said)).hasMessageStartingWith(message);
  }

  @Test
  void twoUnnamedOfOneKindSideBySide_areNotGuessed() {
    assertThatThrownBy(() -> java("nailsPerSheet(in(16), in(6), in(12))"))
        .isInstanceOf(Unreadable.class)
        .hasMessage(
            "in(16) and in(6) are of one kind side by side; say which is which: nailsPerSheet(spacing = in(16), edge_spacing = in(6), field_spacing = in(12))");
  }

  @Test
  void presetsHoldForWhatFollows() {
    assertThat(java("nailsPerSheet(16 in, Nailing.edge(6 in).field(12 in))"))
        .isEqualTo(
            "nailsPerSheet(in(16), Nailing.edge(in(6)).field(in(12)), new SheetSize(in(96), in(48)));");
    assertThat(java("nailsPerSheet(16 in, edge = 6 in, field = 12 in)"))
        .isEqualTo(
            "nailsPerSheet(in(16), new Nailing(in(6), in(12), NO), new SheetSize(in(96), in(48)));");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "rafterCheck(sizze = 2x6) | rafterCheck has no \"sizze\" (did you mean size?); it takes species, grade, size, value_set, spacing, live, dead, load, deflection_limit, span, bearing",
        "rafterCheck(size = joist) | size is \"joist\", which is not defined; it must be one of 2x4, 2x6, 2x8, 2x10, 2x12",
        "rafterCheck(size = 2x7) | size is \"2x7\"; it must be one of 2x4, 2x6, 2x8, 2x10, 2x12",
        "sheetUnitPrice(disposal = 3 lb) | sheetUnitPrice has no \"disposal\" (did you mean disposal_lb?); it takes sheet, waste, nails, nail, extras, hours, disposal_lb, disposal_usd_per_ton, tax, labor, overhead, margin",
        "rafterCheck(size = 2x6, size = 2x8) | size is given twice",
        "slopeLength(run = 15 psf, rise = 6 in 12) | run is 15 psf; it must be a number of feet",
        "slopeLength(run = 15, rise = 6 in 12) | run is 15 without a unit; write 15 ft",
        "slopeLength(run = 15 ft, rise = 6) | rise is 6 without a unit; write 6 in 12",
        "slopeLength(run = 15 ft, 6 in 12) | 6 in 12 stands behind a named argument; name it as well: run, rise",
        "sheetsByArea(100 sqft, 10 %, 3) | 3 is one argument too many; sheetsByArea takes deck_area, waste",
        "given(thickness = 3 in) | thickness cannot be given for all calls, because it does not mean the same in each; name it in the call. What can be given: spacing, species, grade, size, value_set, code, edition, wind, exposure, ground_snow, risk_category, rise, dead, deflection_limit, labor, tax, overhead, margin",
        "given(spacing = 30 psf) | spacing is 30 psf; it must be a number of inches",
        "3 ft + 4 | 4 has no unit and cannot be added to 3 ft; write 4 ft",
        "14 - 6 ft | 14 has no unit and 6 ft cannot be taken from it; write 14 ft; feet and inches are written with the hyphen touching both, 14-6 ft",
        "3 ft == 36 in | == compares to the last digit; say within what: 3 ft - 36 in <= 1/16 in, and the other way round",
        "ft(42-6) | ft(42-6) is arithmetic in Java, not a length; as it is spoken it stands in quotes: ft(\"42-6\")",
      })
  void whatCannotBeMeant_isSaidInOneLine(String said, String why) {
    assertThatThrownBy(() -> java(said)).isInstanceOf(Unreadable.class).hasMessage(why);
  }

  @Test
  void whatIsStillNeeded_isListedWithWhatMayStandThere() {
    assertThatThrownBy(() -> java("slopeLength(run = 15 ft)"))
        .hasMessage(
            "slopeLength still needs rise (a pitch, 6 in 12);%nfor instance slopeLength(run = 15 ft, rise = 6 in 12)"
                .formatted());
    assertThatThrownBy(() -> java("sheetsByArea(1408 sqft)"))
        .hasMessage(
            "sheetsByArea still needs waste (a number of %%);%nfor instance sheetsByArea(1408 sqft, waste = 0 %%)"
                .formatted());
    assertThatThrownBy(
            () -> java("rafterCheck(size = 2x8, species = SPF, grade = #2, snow = 30 psf)"))
        .hasMessageEndingWith(
            "%nfor instance rafterCheck(size = 2x8, species = SPF, grade = #2, snow = 30 psf, spacing = 16 in, dead = 10 psf, span = 12 ft)"
                .formatted());
  }

  /** What is said to be typed can be typed, whichever function is asked. */
  @Test
  void whatIsStillNeeded_isSaidWithACallThatIsTaken() {
    int asked = 0;
    for (Card card : Catalog.shipped().cards()) {
      try {
        java(card.call() + "()");
      } catch (Unreadable missing) {
        asked++;
        String call = missing.getMessage().split("for instance ")[1];
        assertThat(new Standing().made(call).value()).as(call).isNotNull();
      }
    }
    assertThat(asked).isGreaterThan(100);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "nailDimensions(nail = 8d-common) | nailDimensions(NAIL_8D_COMMON);",
        "nailDimensions(nail = 8D common) | nailDimensions(NAIL_8D_COMMON);",
        "nailDimensions(8d-common) | nailDimensions(NAIL_8D_COMMON);",
        "screwDimensions(screw = #10) | screwDimensions(SCREW_10);",
        "screwDimensions(screw = NO_10) | screwDimensions(SCREW_10);",
        "snowImportance(risk = ii, edition = 7-16) | snowImportance(RISK_II, ASCE7_16);",
        "panelWeight(7/16, osb) | panelWeight(CATEGORY_7_16, OSB, new SheetSize(in(96), in(48)));",
        "woodGravity(DF) | woodGravity(DOUGLAS_FIR_LARCH);",
        "panelSpan(span_rating = 32/16, thickness = 15/32 in, spacing = 24 in, edge_support = no) | panelSpan(new RatedPanel(RATING_32_16, in(\"15/32\")), in(24), NO, psf(10));",
        "2x6 | SIZE_2X6;",
        "SPF | SPRUCE_PINE_FIR;",
        "8d | 8d;",
      })
  void aWordWhereOneIsDue_isSaidAsTheTradeSaysIt(String said, String java) {
    assertThat(java(said)).isEqualTo(java);
  }

  @Test
  void factsGivenOnce_areTakenByLaterCallsAndShown() {
    session.read("given(spacing = 24 in, species = SPF, code = irc-2021, wind = 130 mph)");
    Reading.Made made =
        session.made(
            "rafterCheck(size = 2x6, grade = #2, snow = 30 psf, dead = 10 psf, span = 11-6 ft)");
    assertThat(made.notes().get(0)).isEqualTo("given: species spruce-pine-fir, spacing 24 in");
    assertThat(made.java()).contains("new Lumber(given_species,", "new LiveLoad(given_spacing,");
    assertThat(session.made("nailsPerSheet(edge = 6 in, field = 12 in)").java())
        .startsWith("nailsPerSheet(given_spacing, ");
    assertThat(session.made("nailsPerSheet(spacing = 16 in, edge = 6 in, field = 12 in)").java())
        .startsWith("nailsPerSheet(in(16), ");
    assertThat(session.made("given").value())
        .hasToString("spacing = 24 in\nspecies = spruce-pine-fir\ncode = irc-2021\nwind = 130 mph");
  }

  /** A spacing of nails or clips is no spacing of rafters, whatever its column is called. */
  @Test
  void aFact_isTakenOnlyWhereItMeansTheSame() {
    session.read("given(spacing = 24 in)");
    assertThatThrownBy(() -> java("practicalNailSpacing(most = 6 in)"))
        .hasMessageContaining("still needs spacing");
    for (Card card : Catalog.shipped().cards()) {
      for (Parameter parameter : card.parameters()) {
        if (Fact.of(card, parameter).filter(Fact.SPACING::equals).isPresent()) {
          assertThat(parameter.text()).as(card.name()).contains("center to center");
        }
      }
    }
  }

  @Test
  void everyParameter_canBeCalledByItsColumnAndItsShortestName() {
    for (Card card : Catalog.shipped().cards()) {
      ParameterNames names = ParameterNames.of(card);
      for (Parameter parameter : card.parameters()) {
        assertThat(names.parameter(parameter.column())).as(card.name()).contains(parameter);
        assertThat(names.parameter(names.shortest(parameter))).as(card.name()).contains(parameter);
      }
    }
  }

  /** Reading what a line became makes nothing else of it, so that a session can be run again. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "x = 24 in * 2",
        "y = rafterCheck(size = 2x6, species = SPF, grade = #2, spacing = 24 in, snow = 30 psf, dead = 10 psf, span = 11-6 ft)",
        "z = 1408.72 sqft * 1.1",
        "c = 5/12",
      })
  void theJavaOfALine_isReadAsItself(String said) {
    String java = java(said);
    assertThat(java(java)).isEqualTo(java);
  }

  @Test
  void whatALineBecame_canBeAskedFor() {
    session.read("x = 16-9 1/4 ft");
    assertThat(session.made("show java").value()).hasToString("var x = ft(\"16-9 1/4\");");
    assertThat(session.made("showJava(\"24 in\")").value()).hasToString("in(24);");
  }

  @Test
  void aLineNestedTooDeep_isRefusedInOneLine() {
    assertThatThrownBy(() -> java("(".repeat(5000) + "1" + ")".repeat(5000)))
        .hasMessageStartingWith("more than 200 brackets stand inside one another here");
  }

  @Test
  void wordsOfOneSet_areNeverTwoOptions() {
    for (Card card : Catalog.shipped().cards()) {
      for (Parameter parameter : card.parameters()) {
        if (parameter.options() != null) {
          for (Enum<?> option : parameter.options().getEnumConstants()) {
            Set<String> others = new TreeSet<>();
            for (Enum<?> other : parameter.options().getEnumConstants()) {
              if (other != option && sheathwright.catalog.Spoken.names(option.name(), other)) {
                others.add(other.name());
              }
            }
            assertThat(others).as(List.of(card.name(), option).toString()).isEmpty();
          }
        }
      }
    }
  }
}

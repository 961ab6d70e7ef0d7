package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;

class CatalogTest {

  private static final Catalog CATALOG = Catalog.shipped();

  private static List<String> namesAbout(String... words) {
    return CATALOG.about(List.of(words)).stream().map(Card::name).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"nails_per_sheet", "nailsPerSheet", "NAILS_PER_SHEET", "nails per sheet"})
  void named_readsEverySpelling(String name) {
    Card card = CATALOG.named(name);
    assertThat(card.name()).isEqualTo("nails_per_sheet");
    assertThat(card.method().getName()).isEqualTo("nailsPerSheet");
    assertThat(card.room()).isEqualTo("fastening");
  }

  @ParameterizedTest
  @CsvSource({
    "nail_per_sheet,   nails_per_sheet",
    "rafter_max_spam,  rafter_max_span",
    "raftercheque,     rafter_check",
    "sheets_by_areas,  sheets_by_area",
    "sisterstok,       sister_stock",
  })
  void named_findsTheNearestNamesOfAMisspelledOne(String misspelled, String nearest) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> CATALOG.named(misspelled))
        .withMessageStartingWith(
            "there is no function \"%s\"; the nearest are %s, ".formatted(misspelled, nearest));
  }

  /** Blanks, capitals and underscores are no letters to change: 4 for sheet, 5 for piece. */
  @ParameterizedTest
  @ValueSource(strings = {"nailsperfoot", "NAILS PER FOOT", "nails_per_foot"})
  void named_countsOnlyLetters(String misspelled) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> CATALOG.named(misspelled))
        .withMessageStartingWith(
            "there is no function \"%s\"; the nearest are nails_per_sheet, nails_per_piece, "
                .formatted(misspelled));
  }

  @Test
  void called_takesTheTwoSpellingsAlone() {
    assertThat(CATALOG.called("nails_per_sheet")).contains(CATALOG.named("nails_per_sheet"));
    assertThat(CATALOG.called("nailsPerSheet")).contains(CATALOG.named("nails_per_sheet"));
    assertThat(CATALOG.called("nails per sheet")).isEmpty();
    assertThat(CATALOG.called("chimney")).isEmpty();
    assertThat(CATALOG.find("nails per sheet")).contains(CATALOG.named("nails_per_sheet"));
  }

  @Test
  void packages_areThoseOfTheMethods() {
    assertThat(CATALOG.packages())
        .containsExactlyElementsOf(
            CATALOG.cards().stream()
                .map(card -> card.method().getDeclaringClass().getPackageName())
                .distinct()
                .toList())
        .contains("sheathwright.fastening.count");
  }

  @Test
  void named_offersThreeNames() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> CATALOG.named("chimney"))
        .withMessageMatching(
            "there is no function \"chimney\"; the nearest are [a-z_0-9]+, [a-z_0-9]+,"
                + " [a-z_0-9]+");
  }

  @ParameterizedTest
  @CsvSource({
    // the classic pairs, counted by hand
    "kitten, sitting, 3",
    "flaw,   lawn,    2",
    "nails,  nails,   0",
    "nail,   nails,   1",
    "'',     abc,     3",
    "abc,    '',      3",
  })
  void distance_countsLettersToChange(String left, String right, int letters) {
    assertThat(Catalog.distance(left, right)).isEqualTo(letters);
  }

  @Test
  void about_putsAFunctionNamedSoBeforeOneThatMentionsIt() {
    // sister_stock speaks of nails in its summary, sheet_unit_price in a column only.
    assertThat(namesAbout("nail"))
        .containsSubsequence("nails_per_sheet", "sister_stock", "sheet_unit_price");
    assertThat(namesAbout("rafter"))
        .containsSubsequence("rafter_check", "sister_stock")
        .containsSubsequence("rafter_max_span", "sister_stock");
  }

  @Test
  void about_wantsEveryWordWithoutRegardToCase() {
    assertThat(namesAbout("Rafter", "SPAN")).startsWith("rafter_max_span");
    assertThat(namesAbout("rafter", "margin")).isEmpty();
    assertThat(namesAbout("xyzzy")).isEmpty();
  }

  /** A word of the trade, one inside a sentence, and one that begins it with a capital. */
  @Test
  void about_readsWordsAndSentences() {
    assertThat(namesAbout("scab")).contains("sister_splice");
    assertThat(namesAbout("pulled")).contains("nail_withdrawal");
    assertThat(namesAbout("how", "average")).contains("mean_roof_height");
  }

  @Test
  void about_knowsTheRooms() {
    assertThat(namesAbout("pricing")).contains("sheet_unit_price").doesNotContain("sister_stock");
  }

  @ParameterizedTest
  @CsvSource({
    // the presets that the contract names
    "nails_per_sheet,  blocked_edges,   no",
    "nails_per_sheet,  sheet_length_in, 96",
    "nails_per_sheet,  sheet_width_in,  48",
    "rafter_check,     bearing_in,      1.5",
    "sister_stock,     sister_size,     2x6",
    "sister_stock,     nail_spacing_in, 12",
    "sister_stock,     nail_rows,       2",
    "sheet_unit_price, extras_usd,      0",
  })
  void preset_isWhatABlankMeans(String function, String column, String preset) {
    Parameter parameter = CATALOG.named(function).parameter(column);
    assertThat(parameter.isRequired()).isFalse();
    assertThat(parameter.read("", Source.GIVEN).plain()).isEqualTo(preset);
    assertThat(parameter.read("  ", Source.GIVEN).name()).isEqualTo(column);
  }

  @Test
  void everyPreset_canBeRead() {
    assertThat(CATALOG.cards())
        .flatExtracting(Card::parameters)
        .filteredOn(parameter -> !parameter.isRequired())
        .isNotEmpty()
        .allSatisfy(
            parameter ->
                assertThat(
                        parameter
                            .read("", Source.GIVEN)
                            .refusal()
                            .filter(refusal -> !refusal.isAnswer()))
                    .as(parameter.column())
                    .isEmpty());
  }

  @Test
  void words_meanOneThingEach() {
    // At the prompt every option is imported by its bare name.
    assertThat(CATALOG.cards().stream().flatMap(card -> card.parameters().stream()))
        .extracting(Parameter::options)
        .filteredOn(Objects::nonNull)
        .satisfies(
            options ->
                assertThat(
                        options.stream()
                            .distinct()
                            .flatMap(type -> Arrays.stream(type.getEnumConstants())))
                    .extracting(Enum::name)
                    .doesNotHaveDuplicates());
  }

  @Test
  void parameter_isNullForAColumnThatIsNotThere() {
    assertThat(CATALOG.named("sheets_by_area").parameter("rise_in_12")).isNull();
  }
}

package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers as people read them. */
class ShownTest {

  @ParameterizedTest(name = "{0} in [{1}] is {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "65       | sheet       | 65 sheets",
        "1        | sheet       | 1 sheet",
        "0.5      | sheet       | 0.5 sheets",
        "43       | nails/sheet | 43 nails/sheet",
        "1        | nail        | 1 nail",
        "468      | nail        | 468 nails",
        "2        | piece       | 2 pieces",
        "117      | $/sheet     | $117.00/sheet",
        "0.026    | $/nail      | $0.026/nail",
        "0.02     | $/nail      | $0.02/nail",
        "1408.725 | $           | $1,408.73", // a half cent that is less as a double
        "-5       | $           | -$5.00",
        "-0.004   | $           | $0.00", // nothing owed, not minus nothing
        "201.25   | in          | 201-1/4 in",
        "1.375    | in          | 1-3/8 in",
        "0.3      | in          | 0.3 in",
        "12.34567 | in          | 12.3457 in",
        "16.770833333333332 | ft | 16' 9-1/4\"",
        "1973.26  | sq ft       | 1,973.26 sq ft",
        "20.674   | lb/in       | 20.67 lb/in",
        "12       | %           | 12 %",
        "6        | in 12       | 6 in 12",
        "0.33333333 | ``        | 0.3333",
        "-0.12345 | lb          | -0.1235 lb", // less than one keeps four decimals
        "0.99996  | lb          | 1 lb",
        "-1.26    | lb          | -1.3 lb",
        "9999.96  | lb          | 10,000 lb",
        "0.4      | in-lb       | 0.4 in-lb",
        "-0.00001 | lb          | 0 lb", // nothing, not minus nothing
        "-0.00001 | in-lb       | 0 in-lb",
        "4.5      | in-lb       | 5 in-lb",
        "-0.5     | $           | -$0.50",
        "0.0265   | $/nail      | $0.027/nail",
        "-1       | sheet       | -1 sheets",
        "1.15     | ``          | 1.15",
      })
  void with_showsANumberWithItsUnit(double number, String symbol, String text) {
    assertThat(Shown.with(Units.written(symbol).orElseThrow(), number)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {16.770509831248425, 0.1, 1e-7, 123456789.125, -0.000123, 1e15, 2.5, 0, 312})
  void plain_readsBackAsTheSameNumberWithoutExponent(double number) {
    assertThat(Double.parseDouble(Shown.plain(number))).isEqualTo(number);
    assertThat(Shown.plain(number)).doesNotContain("E");
  }

  @Test
  void plain_printsWholeNumbersWithoutAPoint() {
    assertThat(Shown.plain(312)).isEqualTo("312");
    assertThat(Shown.plain(-0.0)).isEqualTo("0");
    assertThat(Shown.plain(1e3)).isEqualTo("1000");
  }

  @Test
  void inWords_leavesTheUnitOff() {
    assertThat(Shown.inWords("edge_spacing_in")).isEqualTo("edge spacing");
    assertThat(Shown.inWords("labor_usd_per_h")).isEqualTo("labor");
    assertThat(Shown.inWords("sheets")).isEqualTo("sheets");
  }

  @ParameterizedTest
  @CsvSource({"161.4, 13-5", "160.5, 13-5", "168, 14-0", "167.4, 13-11", "11, 0-11"})
  void feetAndInches_spellWholeInches(double inches, String text) {
    assertThat(Choice.feetAndInches(in(inches).rounded()).value()).isEqualTo(text);
  }

  @Test
  void source_tellsItsMark() {
    assertThat(Source.read("NDS 2018").at("12.2.3")).hasToString("NDS 2018, 12.2.3");
    assertThat(Source.secondHand("NDS 2018")).hasToString("NDS 2018 (secondary source)");
    assertThat(Source.fromMemory("NDS 1997").at("4A")).hasToString("NDS 1997, 4A (from memory)");
    assertThat(Source.COMMON_PRACTICE).hasToString("common practice, no source");
    assertThat(Source.derived("statics")).hasToString("statics (derived)");
  }

  @Test
  void source_saysWhichPartsWereHadLessSurely() {
    Source printed = Source.read("NDS 2018").but("Table 4A from memory").at("4.3");
    assertThat(printed).hasToString("NDS 2018, 4.3; Table 4A from memory");
    assertThat(printed.mark()).isEqualTo(Source.Mark.READ);
    assertThat(Source.fromMemory("NDS 1997").but("all of 4A"))
        .hasToString("NDS 1997; all of 4A (from memory)");
  }

  @Test
  void source_isNamedPlainlyWhereSomebodyReadIt() {
    assertThat(Source.read("NDS 2018").plainly()).isEqualTo("NDS 2018");
    assertThat(Source.secondHand("NDS 2018").plainly()).isEqualTo("NDS 2018");
    assertThat(Source.derived("statics").plainly()).isEqualTo("statics");
    assertThat(Source.fromMemory("NDS 1997").plainly()).isEmpty();
    assertThat(Source.COMMON_PRACTICE.plainly()).isEmpty();
    assertThat(Source.given("job.csv, line 12").plainly()).isEqualTo("given");
  }

  @Test
  void source_ofAUsersCell_saysWhereItStands() {
    Source.Cell cell = new Source.Cell("job.csv", 12, "value", "eave_ft");
    assertThat(Source.given(cell)).hasToString("job.csv, line 12 (given)");
    assertThat(Source.given(cell).cell()).contains(cell);
    assertThat(Source.given("quoted")).hasToString("quoted (given)");
    assertThat(Source.GIVEN).hasToString("given");
  }

  @Test
  void text_isTheSameWhateverLanguageTheMachineSpeaks() {
    java.util.Locale own = java.util.Locale.getDefault();
    try {
      java.util.Locale.setDefault(java.util.Locale.GERMANY);
      assertThat(Shown.text("%.2f of %s", 1.5, "two")).isEqualTo("1.50 of two");
    } finally {
      java.util.Locale.setDefault(own);
    }
  }

  @Test
  void counted_takesThePluralBesideAnyNumberButOne() {
    assertThat(Shown.counted(1, "place")).isEqualTo("1 place");
    assertThat(Shown.counted(1.5, "sheet")).isEqualTo("1.5 sheets");
    assertThat(Shown.counted(0, "place")).isEqualTo("0 places");
    assertThat(Shown.many(1, "place")).isEqualTo("place");
    assertThat(Shown.many(2, "place")).isEqualTo("places");
    assertThat(Shown.many(2, "sq ft")).isEqualTo("sq ft");
  }

  /** Lines of nine characters at most, by hand. */
  @Test
  void wrapped_goesOnAtAWord() {
    assertThat(Shown.wrapped("one two three", 9, "", "  ")).containsExactly("one two", "  three");
    assertThat(Shown.wrapped("one two 34", 9, "", "  ")).containsExactly("one two", "  34");
    assertThat(Shown.wrapped("one two 3", 9, "", "  ")).containsExactly("one two 3");
    assertThat(Shown.wrapped("one two 3 4", 9, "", "  ")).containsExactly("one two 3", "  4");
    assertThat(Shown.wrapped("longerthannine", 9, "a = ", ""))
        .containsExactly("a = longerthannine");
    assertThat(Shown.wrapped("one ", 9, "a = ", "")).containsExactly("a = one");
    assertThat(Shown.wrapped("deck().area().in", 9, "", "  "))
        .containsExactly("deck()", "  .area()", "  .in");
    assertThat(Shown.wrapped("deck.area is", 9, "", "")).containsExactly("deck.area", "is");
  }

  @Test
  void inWords_keepsAnotherUnitThanItsOwn() {
    assertThat(Shown.inWords("span_ft", Units.INCH)).isEqualTo("span ft");
    assertThat(Shown.inWords("span_ft", Units.FOOT)).isEqualTo("span");
    assertThat(Shown.inWords("edge_rows", Units.RATIO)).isEqualTo("edge rows");
  }
}

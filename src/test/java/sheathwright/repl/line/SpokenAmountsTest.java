package sheathwright.repl.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of tokens, row by row; expected inches and parts are worked out by hand. */
class SpokenAmountsTest {

  private static Optional<Amount> first(String line) {
    List<Token> tokens = Lexer.tokens(line);
    return new SpokenAmounts(line, tokens).at(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "24 in | in(24) | 24 in",
        "24in | in(24) | 24 in",
        "24 inches | in(24) | 24 in",
        "1-3/8 in | in(\"1-3/8\") | 1-3/8 in",
        "1 3/8 in | in(\"1-3/8\") | 1-3/8 in",
        "1½ in | in(\"1-1/2\") | 1-1/2 in",
        "1-½ in | in(\"1-1/2\") | 1-1/2 in",
        "¼ in | in(\"1/4\") | 1/4 in",
        "5/8 in | in(\"5/8\") | 5/8 in",
        "63/64 in | in(\"63/64\") | 0.9844 in",
        "12 ft | ft(12) | 12' 0\"",
        "16-9 1/4 ft | ft(\"16-9 1/4\") | 16' 9-1/4\"",
        "14-6 ft | ft(\"14-6\") | 14' 6\"",
        "14-6ft | ft(\"14-6\") | 14' 6\"",
        "14–6 ft | ft(\"14-6\") | 14' 6\"",
        "1/2 ft | ft(0.5) | 0' 6\"",
        "16' 9-1/4\" | ft(\"16' 9-1/4\") | 16' 9-1/4\"",
        "16'9\" | ft(\"16' 9\") | 16' 9\"",
        "16′ 9¼″ | ft(\"16' 9-1/4\") | 16' 9-1/4\"",
        "16' | ft(\"16'\") | 16' 0\"",
        "9\" | in(9) | 9 in",
        "9-1/4\" | in(\"9-1/4\") | 9-1/4 in",
        "30 psf | psf(30) | 30 psf",
        "20 plf | lbPerFt(20) | 20 lb/ft",
        "90 min | hours(1.5) | 1.5 h",
        "1/2 h | hours(0.5) | 0.5 h",
        "1 square | squares(1) | 1 square",
        "1408.72 sq ft | sqft(1408.72) | 1,408.72 sq ft",
        "1408.72 sqft | sqft(1408.72) | 1,408.72 sq ft",
        "6 in 12 | pitch(6) | 6 in 12",
        "10 % | pct(10) | 10 %",
        "10% | pct(10) | 10 %",
        "10 %) | pct(10) | 10 %",
        "10 % * x | pct(10) | 10 %",
        "10% + 5% | pct(10) | 10 %",
        "$41.25 | usd(41.25) | $41.25",
        "$78/ton | usdPerTon(78) | $78.00/ton",
        "$38.50/sheet | usdPerSheet(38.50) | $38.50/sheet",
        "$17.10 per piece | usdPerPiece(17.10) | $17.10/piece",
        "$46/h | usdPerHour(46) | $46.00/h",
        "2 $/sqft | usd(2).dividedBy(sqft(1)) | $2.00 per sq ft",
        "46 $/h | usdPerHour(46) | $46.00/h",
        "0.40 $/ft | usdPerFoot(0.40) | $0.40/ft",
        "0.40$ per ft | usdPerFoot(0.40) | $0.40/ft",
        "12 $ | usd(12) | $12.00",
        "$2/sqft | usd(2).dividedBy(sqft(1)) | $2.00 per sq ft",
        "0.9 h | hours(0.9) | 0.9 h",
        "0.9 h/sheet | hoursPerSheet(0.9) | 0.9 h/sheet",
        "43 nails/sheet | nailsPerSheet(43) | 43 nails/sheet",
        "2500 nails | nails(2500) | 2,500 nails",
        "130 mph | mph(130) | 130 mph",
      })
  void anAmount_isReadAsItIsSpoken(String said, String java, String shown) {
    Amount amount = first(said).orElseThrow();
    assertThat(amount.java()).isEqualTo(java);
    assertThat(amount.figure()).hasToString(shown);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "38-6",
        "14 - 6",
        "5/12",
        "8d",
        "8d-common",
        "12f",
        "2x6",
        "24",
        "10 % - 3",
        "10 % 3",
        "7-16",
        "32/16",
        "5 in(3)",
        "5 height",
        "24 inside",
        "0x1F",
        "in",
        "3 ftx"
      })
  void whatIsNoAmount_isLeftToJavaOrToAChoice(String said) {
    assertThat(first(said)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "16-1/2 ft | 16-1/2 ft could be 16 ft 1/2 in or 16 and 1/2 feet: write 16' 1/2\" or 16.5 ft",
        "1-3/8 ft | 1-3/8 ft could be 1 ft 3/8 in or 1 and 3/8 feet: write 1' 3/8\" or 1.375 ft",
        "10-2 in | 10-2 in could be 10 ft 2 in or a subtraction: write 10-2 ft, or 10 in - 2 in",
        "100/24 in | 100/24 in could be (100/24) in or 100 / (24 in): write which, the first as a decimal",
        "7/6 in | 7/6 in could be (7/6) in or 7 / (6 in): write which, the first as a decimal",
        "$1,408.72 | $1,408.72 has a comma, which parts arguments here: write $1408.72, or a space after the comma",
        "16-13 ft | ~\"16-13\" is not a length that can be read: the inches after the feet must be less than 12~",
      })
  void whatCouldBeReadInTwoWays_isRefusedWithBoth(String said, String why) {
    assertThatThrownBy(() -> first(said)).isInstanceOf(Unreadable.class).hasMessage(why);
  }

  @Test
  void textsBlocksCharactersAndComments_passWhole() {
    assertThat(
            Lexer.tokens("f(\"16' 9\\\"\", 'x', '\\'') // 24 in\n/* 5\" */ g(\"\"\"\n 1\" \"\"\")"))
        .extracting(Token::text)
        .containsExactly(
            "f",
            "(",
            "\"16' 9\\\"\"",
            ",",
            "'x'",
            ",",
            "'\\''",
            ")",
            "g",
            "(",
            "\"\"\"\n 1\" \"\"\"",
            ")");
  }

  @Test
  void typographicSigns_arePlainOnes() {
    assertThat(Lexer.tokens("“2x6” 2×6 a × b – c"))
        .extracting(Token::text)
        .containsExactly("\"2x6\"", "2x6", "a", "*", "b", "-", "c");
  }

  @Test
  void typographicQuoteThatNobodyClosed_isASignOfItsOwn() {
    assertThat(Lexer.tokens("a “")).extracting(Token::text).containsExactly("a", "“");
  }

  @Test
  void lettersWrittenAsNumbersOutsideTexts_goToJavaUnread() {
    assertThat(Lexer.isUnreadable(Lexer.tokens("in\\u0028 24)"))).isTrue();
    assertThat(Lexer.isUnreadable(Lexer.tokens("x = \"\\u0028\""))).isFalse();
  }
}

package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The table of hints: what was typed, and what is said of it. */
class HintsTest {

  /** What was typed, how the answer begins, and what else it tells to type. */
  private record Row(String typed, String said, String toType) {}

  private static final List<Row> TABLE =
      List.of(
          new Row("yd(3)", "there is no unit or function \"yd\"", "in, ft, sqft"),
          new Row("waste = 10 kPa", "there is no unit \"kPa\"", "psf, psi"),
          new Row("t = 10 inches + 4 kPa", "there is no unit \"kPa\"", "psf, psi"),
          new Row("waste = 10 pct", "pct stands before its number", "pct(10)"),
          new Row("t = 12 inchs + 3 in", "there is no unit \"inchs\"; the nearest is inch", ""),
          new Row("long = 20 m + 3 ft", "there is no unit \"m\"", "in, ft, sqft"),
          new Row(
              "sheetsByArea(in(3), pct(10))",
              "deck area is in(3); it must be a number of sq ft",
              "sq ft"),
          new Row(
              "sheetsByArea(32, pct(10))", "deck area is 32 without a unit; write 32 sq ft", ""),
          new Row("sqft(\"a\")", "a text in quotes stands where a number without", ""),
          new Row("in(3).plus(psf(4))", "4 psf cannot be added to 3 in: they do not measure", ""),
          new Row(
              "nailsPerSheet(in(16), pct(6))",
              "edge spacing is pct(6); it must be a number of",
              "inches"),
          new Row("in(3).bar()", "there is no \"bar\" behind this dot", "Tab"),
          new Row("String s = null; s.length()", "it asks something of a name that holds", ""),
          new Row("List.of(1).get(3)", "there is no place 3; there are 1", ""),
          new Row("1/0", "nothing can be divided by zero", ""),
          new Row("\"abc", "a text is not closed", "\""),
          new Row("new int[]{1, 2}", "1\n2", ""),
          new Row("null", "nothing", ""),
          new Row("sheetsByAera(sqft(3), pct(1))", "there is no \"sheetsByAera\"", "sheetsByArea"));

  @Test
  void everyLine_isSaidInWordsOfTheTrade() {
    try (Session session = new Session()) {
      for (Row row : TABLE) {
        List<Answer> answers = session.answers(row.typed());
        String said = answers.get(answers.size() - 1).text();
        assertThat(said)
            .as(row.typed())
            .startsWith(row.said())
            .contains(row.toType())
            .doesNotContain("Exception", "incompatible", "null", "operand", "$", "expected");
      }
    }
  }
}

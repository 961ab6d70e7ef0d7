package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What help says can be typed to lay a roof can be typed, and a wrong call is shown a right one.
 */
class DeckWordsTest {

  private static final List<String> BEFORE =
      List.of(
          "south = Plane.rectangle(\"south\", ft(42), ft(17))",
          "rafters = Supports.every(in(16))",
          "layout1 = layout(south, rafters)",
          "layout2 = layout(Plane.triangle(\"east\", ft(32), ft(17)), rafters)",
          "deck = together(layout1, layout2)",
          "mark1 = Mark.of(\"a\", ROT, in(60), in(10), in(30), in(14))",
          "mark2 = Mark.cell(\"b\", SOFT, rafters, 12, 2)");

  @Test
  void everyLineOfTheHelp_canBeTyped() {
    try (Session session = new Session()) {
      BEFORE.forEach(line -> assertRuns(session, line));
      DeckWords.typed().forEach(line -> assertRuns(session, line));
    }
  }

  private static void assertRuns(Session session, String line) {
    List<Answer> answers = session.answers(line);
    assertThat(answers).as(line).isNotEmpty().noneMatch(Answer::isError);
  }

  @Test
  void aWrongCall_isShownARightOne() {
    try (Session session = new Session()) {
      assertThat(session.answers("south = Plane.rectangle(\"south\", 42, 17)").get(0).text())
          .contains("for instance Plane.rectangle(");
      assertRuns(session, "south = Plane.rectangle(\"south\", ft(42), ft(17))");
      assertThat(session.answers("layout(south)").get(0).text())
          .isEqualTo("layout was given (Plane);\nfor instance layout(south, rafters)");
      assertThat(session.answers("straighten(number(1))").get(0).text())
          .contains("for instance straighten(string, sisters = 2x6, rafters = 2x6, used = 0.86)");
    }
  }

  @Test
  void aWrongUnitOrALoneQuote_isShownARightOne() {
    try (Session session = new Session()) {
      assertThat(session.answers("sheets(sqft(96), pct(10))").get(0).text())
          .endsWith("it takes one number, for instance sheets(2)");
      assertRuns(session, "sheets(2)");
      assertThat(session.answers("home “").get(0).text())
          .isEqualTo("a quote stands alone; a text stands between two, as in \"roof\"");
      assertRuns(session, "\"roof\"");
    }
  }
}

package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.figure.RefusedException;

/** Help goes by the work, knows the trade's words, and fits the window. */
class HelpTest {

  @Test
  void theFirstPage_goesInTheOrderOfTheWork() {
    assertThat(Help.page(80))
        .containsSubsequence(
            "What the roof needs",
            "Lay sheets",
            "Nail",
            "Check a rafter",
            "Sister and level",
            "Patches",
            "Cut lists",
            "Price",
            "Save");
  }

  @Test
  void everyFunction_servesATask() {
    assertThat(Catalog.shipped().cards())
        .allSatisfy(
            card ->
                assertThat(Task.values()).as(card.name()).anyMatch(task -> task.isServedBy(card)));
  }

  @Test
  void everyTask_canBeAskedFor() {
    String page = Help.page(80);
    for (Task task : Task.values()) {
      assertThat(page).contains(": help " + task.asked() + "\n");
      assertThat(Help.about(task.asked(), 80)).startsWith(task.title() + "\n\n").contains("(");
    }
  }

  /** What a roofer or framer would say for each. */
  @ParameterizedTest
  @CsvSource({
    "cut list,        sisterStock",
    "cut lists,       deck.cutList()",
    "Cut List,        repairList(straight)",
    "plywood,         panelSpan",
    "H clips,         edgeClips",
    "collar ties,     rafterThrust",
    "staples,         alternateSchedule",
    "standing seam,   clipSpacing",
    "planks,          boardBase",
    "snow load,       roofSnow",
    "engineer,        framingStop",
    "scab,            sisterSplice",
    "nails per sheet, nailsPerSheet",
  })
  void theTradesWords_findTheFunction(String words, String found) {
    assertThat(Help.about(words, 80)).contains(found);
  }

  @Test
  void everyWordThatBeginsALine_isTold_inLinesOfANarrowWindow() {
    for (String command : CommandWords.all()) {
      assertThat(Help.about(command, 80)).startsWith(command);
      assertThat(Help.about(command, 80).lines()).allMatch(line -> line.length() <= 80);
    }
  }

  @Test
  void tab_knowsTheWordsThatBeginALine() {
    assertThat(Completion.withCommands("se", List.of("setUp("))).containsExactly("seek", "setUp(");
    assertThat(Completion.withCommands("s", List.of("save(")))
        .contains("seek", "scenario", "save(")
        .doesNotContain("save");
    assertThat(Completion.withCommands("order = se", List.of())).isEmpty();
  }

  /** A user who asks for it at the prompt is told where it is typed. */
  @ParameterizedTest
  @CsvSource({
    "quote,        quote demo-data/quince-hollow",
    "change order, change-order my-job --on",
    "Change-Order, change-order my-job --on",
    "close,        close my-job --on",
    "agree,        agree my-job --on",
    "run,          run ",
    "tables,       tables",
  })
  void aCommandOfTheShell_isToldFirst(String words, String typed) {
    assertThat(Help.about(words, 80).lines().limit(5).map(String::strip))
        .anyMatch(line -> line.startsWith("in the shell: ./sheathwright " + typed));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "quote demo-data/quince-hollow",
        "./sheathwright quote demo-data/quince-hollow",
        "quote ./my-job --issue --on 2027-05-04"
      })
  void aLineOfTheShell_isToldWhereItIsTyped(String line) {
    try (Session session = new Session()) {
      assertThat(session.answers(line).get(0).text())
          .isEqualTo(
              "quote is typed in the shell, outside the prompt: ./sheathwright quote demo-data/quince-hollow; help quote tells of it");
    }
  }

  @Test
  void whatACommandMakes_findsIt() {
    assertThat(Help.about("invoice", 80)).startsWith("close  ");
    assertThat(Help.knows("invoice")).isTrue();
    assertThat(Help.page(120)).contains("change-order, check, close");
  }

  @Test
  void whatNothingSpeaksOf_isSaid() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Help.about("xyzzy", 80))
        .withMessage(
            "nothing here speaks of \"xyzzy\"; try one word of it, or help alone for the work in its order");
  }

  @ParameterizedTest
  @ValueSource(ints = {80, 120})
  void everyPage_fitsTheWindow(int width) {
    Stream<String> pages =
        Stream.of(
                Stream.of(Help.page(width)),
                Arrays.stream(Task.values()).map(task -> Help.about(task.asked(), width)),
                Catalog.shipped().cards().stream()
                    .map(Card::name)
                    .map(name -> Help.about(name, width)))
            .flatMap(each -> each);
    assertThat(pages.flatMap(String::lines).filter(line -> line.length() > width)).isEmpty();
  }
}

package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.repl.show.Screen;

/**
 * Nothing that a session holds is lost: what cannot follow a change keeps its value, and says so.
 */
class KeptValuesTest {

  @TempDir private Path folder;

  private Session session = new Session();

  @AfterEach
  void close() {
    session.close();
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  @Test
  void aForgottenUnit_leavesDependentsWithTheirLastGoodValue() {
    answer("up = in(40)");
    answer("c = up.plus(in(2))");
    answer("d = c.plus(in(1))");

    assertThat(answer("up = 41"))
        .isEqualTo(
            """
            up = 41
              c stays 42 in, stale: up is 41, a number without a unit
              d stays 43 in, stale: made from c, which is stale""");
    assertThat(answer("c")).startsWith("42 in  (stale: ");
    assertThat(answer("e = c.plus(in(1))"))
        .isEqualTo("e = 43 in  (stale: made from c, which is stale)");
    assertThat(session.variables()).doesNotContainValue(null);
    assertThat(answer("up = in(50)"))
        .isEqualTo(
            """
            up = 50 in
              c = 52 in (was 42 in)
              d = 53 in (was 43 in)
              e = 53 in (was 43 in)""");
  }

  @Test
  void aForgottenUnit_leavesWhatTheCompilerKnowsToo() {
    answer("up = in(40)");
    answer("Figure<Quantity.Length> c = up.plus(in(2));");
    answer("Object twice() { return c.plus(c); }");
    answer("up = 41");
    assertThat(answer("c")).startsWith("42 in  (stale: ");
    assertThat(answer("twice()")).isEqualTo("84 in");
    answer("up = in(50)");
    assertThat(answer("c")).isEqualTo("52 in");
    assertThat(answer("twice()")).isEqualTo("104 in");
  }

  @Test
  void aLineThatFails_leavesTheVariableAsItWas() {
    answer("a = in(3)");
    answer("if (true) { a = a.plus(in(1)); }"); // the compiler knows it from here on
    answer("a = List.of(1).get(7)");
    assertThat(answer("a")).isEqualTo("4 in");
    answer("a = nonsense(3)");
    assertThat(answer("a")).isEqualTo("4 in");
  }

  @Test
  @Timeout(30)
  void aChangeThatIsStopped_leavesOldValuesMarked() throws Exception {
    answer("wait = 0");
    answer(
        "int slow(int millis) { long end = System.nanoTime() + millis * 1000000L; while (System.nanoTime() < end) { } return millis; }");
    answer("a = slow(wait)");
    answer("b = a + 1");
    Thread stopper = new Thread(this::stopSoon);
    stopper.start();
    assertThat(answer("wait = 60000"))
        .isEqualTo(
            """
            wait = 60000
              a stays 0, stale: stopped; Enter alone goes on
              b stays 1, stale: stopped; Enter alone goes on""");
    stopper.join();
    assertThat(session.variables()).containsEntry("a", 0).containsEntry("b", 1);
    assertThat(answer("wait = 5")).contains("a = 5 (was 0)", "b = 6 (was 1)");
  }

  private void stopSoon() {
    try {
      TimeUnit.MILLISECONDS.sleep(2500);
    } catch (InterruptedException early) {
      Thread.currentThread().interrupt();
    }
    session.stop();
  }

  @Test
  void whatTakesLong_waitsForEnter_atThePromptAlone() {
    session = Session.atPrompt(new Autosave(folder), () -> Screen.PIPE);
    answer("millis = 1200");
    answer("int slow(int n) throws Exception { Thread.sleep(n); return n; }");
    answer("a = slow(millis)");
    answer("b = a + 1");

    assertThat(answer("millis = 3"))
        .containsPattern("a stays 1200, stale: takes [1-9][.]\\d s") // longer where others work too
        .contains("b stays 1201, stale: made from a");
    assertThat(answer("")).isEqualTo("  a = 3 (was 1200)\n  b = 4 (was 1201)");
    assertThat(answer("millis = 4")).contains("a = 4 (was 3)"); // quick by now
  }

  @Test
  void threeLinesAtOnce_areTakenLineByLine_asIsWhatWasCopiedFromAScreen() {
    assertThat(answer("> a = in(1)\n> b = a.plus(in(1))\nb.plus(b)\n"))
        .isEqualTo("a = 1 in\nb = 2 in\n4 in");
  }

  @Test
  void sessions_doNotReachEachOther() {
    try (Session other = new Session()) {
      answer("a = in(1)");
      EstimatorGuideTest.answer(other, "a = in(2)");
      answer("Object own() { return a; }");
      EstimatorGuideTest.answer(other, "Object own() { return a; }");
      assertThat(answer("own()")).isEqualTo("1 in");
      assertThat(EstimatorGuideTest.answer(other, "own()")).isEqualTo("2 in");
    }
  }

  @Test
  void commandWords_needNoParentheses_andLoseNoVariable() {
    answer("order = sheetsByArea(sqft(64), pct(0))");
    assertThat(answer("show order")).startsWith("there is no picture of this yet");
    assertThat(answer("explain order")).contains("deck area");
    assertThat(answer("help nails per sheet")).startsWith("nails_per_sheet");
    assertThat(answer("print \"a text\"")).isEqualTo("a text");
    assertThat(answer("print order.plus(order)")).isEqualTo("4 sheets");
    assertThat(answer("print SPRUCE_PINE_FIR")).isEqualTo(answer("SPRUCE_PINE_FIR"));
    assertThat(answer("SPRUCE_PINE_FIR // a remark")).isEqualTo(answer("SPRUCE_PINE_FIR"));
    assertThat(answer("show nothere")).contains("there is no \"nothere\"");
    assertThat(answer("order")).isEqualTo("sheets = 2 sheets");
    answer("list = in(3)");
    assertThat(answer("list")).isEqualTo("3 in");
    assertThat(answer("help = in(4)")).isEqualTo("help = 4 in");
  }

  @Test
  void list_tellsValueOriginAndState() {
    answer("area = sqft(64)");
    answer("order = sheetsByArea(area, pct(0))");
    answer("area = 3");
    assertThat(answer("list"))
        .startsWith("order = 2 sheets   from area\n    stale: area is 3, a number without a unit")
        .endsWith("\narea = 3");
  }

  @Test
  void undo_takesTheLastEffectBack() {
    answer("a = in(1)");
    answer("b = a.plus(in(1))");
    answer("a = in(5)");
    answer("b");
    assertThat(answer("undo")).isEqualTo("undone: a = in(5)\n  a = 1 in\n  b = 2 in");
    assertThat(answer("b")).isEqualTo("2 in");
    answer("for (int i = 0; i < 3; i++) { a = a.plus(in(1)); }");
    assertThat(answer("a")).isEqualTo("4 in");
    answer("undo");
    assertThat(answer("a")).isEqualTo("1 in");
    assertThat(answer("undo")).contains("undone: b = a.plus(in(1))", "b is gone");
    answer("int f() { return 1; }");
    answer("int f() { return 2; }");
    answer("undo");
    assertThat(answer("f()")).isEqualTo("1");
  }

  @Test
  void delete_saysWhoDependsOnIt() {
    answer("a = in(1)");
    answer("b = a.plus(in(1))");
    assertThat(answer("delete a"))
        .isEqualTo("a is deleted; made from it, and kept with the value it has: b");
    assertThat(answer("b")).isEqualTo("2 in  (stale: made from a, which is deleted)");
    assertThat(answer("delete a")).isEqualTo("there is no \"a\" to delete; there are b");
    answer("undo");
    assertThat(answer("a")).isEqualTo("1 in");
    assertThat(answer("b")).isEqualTo("2 in");
  }

  @Test
  void aMethodReadsWhatAStaleVariableKeeps_andDeclarationsSurvive() {
    for (String line : List.of("x = in(1)", "y = x", "Object f() { return y; }", "x = sheets(3)")) {
      answer(line);
    }
    assertThat(answer("f()")).isEqualTo("3 sheets");
  }
}

package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No line ends the session, and none of what a line can do to the program is more than one line.
 */
class EndsTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "System.exit(4)",
        "Runtime.getRuntime().exit(4)",
        "Runtime.getRuntime().halt(4)",
        "List.of(4).forEach(System::exit)",
        "List.of(4).forEach(Runtime.getRuntime()::halt)",
        "var r = Runtime.getRuntime(); r.halt(4);",
        "import static java.lang.System.exit; exit(4)",
        "try { System.exit(4); } catch (Exception none) { }",
        "java.lang.invoke.MethodHandles.lookup().findStatic(System.class, \"exit\", java.lang.invoke.MethodType.methodType(void.class, int.class)).invoke(4)",
      })
  void anExit_endsTheLineAlone(String exit) {
    try (Session session = new Session()) {
      assertThat(EstimatorGuideTest.answer(session, exit))
          .contains("the line ended with status 4; the session goes on");
      assertThat(EstimatorGuideTest.answer(session, "sheets(2)")).isEqualTo("2 sheets");
    }
  }

  @Test
  void aTextThatSpeaksOfAnExit_isATextLikeAnyOther() {
    try (Session session = new Session()) {
      assertThat(EstimatorGuideTest.answer(session, "said = \"System.exit(7)\" + 1"))
          .isEqualTo("said = \"System.exit(7)1\"");
    }
  }

  private int status(String text, StringWriter out, StringWriter err) throws IOException {
    Path script = folder.resolve("houses.jsh");
    Files.writeString(script, text);
    return Script.run(script, List.of(), new PrintWriter(out, true), new PrintWriter(err, true));
  }

  @Test
  void aScript_mayEndItself_withAStatusOfItsOwn() throws IOException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    assertThat(status("sheets(1)\nSystem.exit(7)\nsheets(2)\n", out, err)).isEqualTo(7);
    assertThat(out).hasToString("1 sheet\n");
    assertThat(err).hasToString("");
    assertThat(status("if (true) { System.exit(0); }\nnonsense\n", out, err)).isZero();
    assertThat(status("nonsense\n", out, err)).isEqualTo(Script.REFUSED);
  }

  @Test
  @Timeout(60)
  void threadsThatGoOn_areSaid_andHoldUpNothing() throws IOException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String lines =
        """
        long end = System.nanoTime() + 8_000_000_000L;
        var t = new Thread(() -> { while (System.nanoTime() < end) { } }, "counting");
        t.start();
        sheets(2)
        """;
    assertThat(status(lines, out, err)).isZero();
    assertThat(out).hasToString("2 sheets\n");
    assertThat(err.toString()).contains("counting");
  }

  @Test
  @Timeout(60)
  void whatCannotBeStopped_isLeftBehind_andSaid() throws Exception {
    try (Session session = new Session()) {
      EstimatorGuideTest.answer(session, "sheets(2)"); // the compiler is awake
      Thread stopper =
          new Thread(
              () -> {
                try {
                  Thread.sleep(3000);
                } catch (InterruptedException early) {
                  Thread.currentThread().interrupt();
                }
                session.stop();
              });
      stopper.start();
      String unstoppable =
          "x = java.util.stream.LongStream.range(0, 5_000_000_000L).mapToDouble(Math::sqrt).sum()";
      assertThat(EstimatorGuideTest.answer(session, unstoppable)).isEqualTo("(stopped)");
      stopper.join();
      assertThat(session.threadsSaid()).contains("a line that was stopped");
      assertThat(EstimatorGuideTest.answer(session, "sheets(2)")).isEqualTo("2 sheets");
      assertThat(session.variables()).isEmpty();
    }
  }

  @Test
  @Timeout(120)
  void brackets_inEachOther_areOneLine() {
    try (Session session = new Session()) {
      String deep = "a = " + "(".repeat(5000) + "1" + ")".repeat(5000);
      assertThat(session.isComplete(deep)).isTrue();
      assertThat(EstimatorGuideTest.answer(session, deep))
          .startsWith("brackets stand 5,000 deep in each other; 200 at most")
          .doesNotContain("\n");
      String most = "a = " + "(".repeat(190) + "1" + ")".repeat(190);
      assertThat(EstimatorGuideTest.answer(session, most)).isEqualTo("a = 1");
      String chain = "b = \"\"" + ".strip()".repeat(5000);
      assertThat(EstimatorGuideTest.answer(session, chain)).doesNotContain("\n");
      assertThat(EstimatorGuideTest.answer(session, "a")).isEqualTo("1");
    }
  }

  @Test
  @Timeout(60)
  void aBracketLeftOpen_takesNoLongTimeToFind() {
    String open = "total = sheets(1\n";
    assertThat(piped(open + "+ 2\n".repeat(200))).contains("the line is not finished");
    assertThat(piped(open + "+ 2\n".repeat(1_500)))
        .startsWith("standard input:1: what begins here is not finished after 1,000 lines;");
    try (Session session = new Session()) {
      String typed = open;
      for (int line = 0; line < 60; line++) {
        assertThat(session.isComplete(typed)).isFalse();
        typed += "+ 2\n";
      }
      assertThat(session.isComplete(typed + ")\n")).isTrue();
    }
  }

  private static String piped(String lines) {
    StringWriter err = new StringWriter();
    int status =
        Script.pipe(
            new BufferedReader(new StringReader(lines)),
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true));
    assertThat(status).isEqualTo(Script.REFUSED);
    return err.toString();
  }

  @Test
  void memoryThatRunsOut_andACallWithoutEnd_areOneLine() {
    try (Session session = new Session()) {
      assertThat(EstimatorGuideTest.answer(session, "big = new long[Integer.MAX_VALUE]"))
          .isEqualTo("it needs more memory than the program has; take less at once");
      EstimatorGuideTest.answer(session, "int f(int n) { return 1 + f(n); }");
      assertThat(EstimatorGuideTest.answer(session, "f(1)"))
          .isEqualTo("it calls itself without end");
      assertThat(EstimatorGuideTest.answer(session, "sheets(2)")).isEqualTo("2 sheets");
    }
  }
}

package sheathwright.repl.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Answers fit the window, by the line and by the screenful. */
class PagerTest {

  private static final String TEN_LINES = "1\n2\n3\n4\n5\n6\n7\n8\n9\n10";

  private final Deque<Integer> keys = new ArrayDeque<>();
  private boolean isTypedAhead;
  private boolean isTaken;

  private String printed(Screen screen, String text) {
    StringWriter out = new StringWriter();
    new Pager(() -> screen, new PrintWriter(out), this::pressed).print(text);
    assertThat(isTaken).isFalse();
    return out.toString();
  }

  private Pager.Keys pressed() {
    isTaken = true;
    return new Pager.Keys() {
      @Override
      public boolean areWaiting() {
        return isTypedAhead;
      }

      @Override
      public int next() {
        return keys.remove();
      }

      @Override
      public void close() {
        isTaken = false;
      }
    };
  }

  @Test
  void aPipe_getsAllOfItAsItIs() {
    assertThat(printed(Screen.PIPE, TEN_LINES).lines()).hasSize(10);
    assertThat(printed(Screen.PIPE, "NOT ok, STOP")).isEqualToIgnoringNewLines("NOT ok, STOP");
  }

  @Test
  void aLongAnswer_comesByTheScreenful() {
    keys.addAll(List.of((int) '\r', (int) '\r'));
    String all = printed(new Screen(80, 5, false), TEN_LINES);
    assertThat(keys).isEmpty();
    assertThat(all).contains("1", "10").containsPattern("4\\R-- Enter goes on");
  }

  @Test
  void q_endsIt() {
    keys.add((int) 'q');
    assertThat(printed(new Screen(80, 5, false), TEN_LINES)).contains("4").doesNotContain("5");
  }

  @Test
  void whatWasTypedAhead_isNotTakenForTheAnswerToTheQuestion() {
    isTypedAhead = true;
    keys.add((int) 'q');
    assertThat(printed(new Screen(80, 5, false), TEN_LINES).lines()).hasSize(10);
    assertThat(keys).containsExactly((int) 'q');
  }

  @Test
  void whatFits_isNotAskedAbout() {
    assertThat(printed(new Screen(80, 11, false), TEN_LINES)).doesNotContain("Enter goes on");
  }

  @Test
  void aLongLine_goesOnAtAWordFartherIn() {
    String line = "  " + "four ".repeat(11).strip();
    assertThat(printed(new Screen(40, 0, false), line).lines())
        .containsExactly("  " + "four ".repeat(6) + "four", "    " + "four ".repeat(4).strip());
  }

  @Test
  void aWarning_isColoredOnlyWhereItWasNotForbidden() {
    Screen colored = Screen.of(80, 0, "xterm", Map.of());
    assertThat(printed(colored, "1.6 NOT ok"))
        .isEqualToIgnoringNewLines("1.6 \u001b[1;31mNOT ok\u001b[0m");
    assertThat(printed(colored, "STOP: an engineer")).startsWith("\u001b[1;31mSTOP\u001b[0m:");
    assertThat(printed(colored, "0.6 ok")).isEqualToIgnoringNewLines("0.6 ok");
    for (Screen plain :
        List.of(
            Screen.of(80, 0, "xterm", Map.of("NO_COLOR", "1")),
            Screen.of(80, 0, "dumb", Map.of()),
            Screen.of(80, 0, "dumb-color", Map.of()),
            Screen.PIPE)) {
      assertThat(printed(plain, "1.6 NOT ok")).doesNotContain("\u001b");
    }
  }

  @Test
  void aTerminalThatDoesNotSayItsSize_isEightyWideAndNotPaged() {
    assertThat(Screen.of(0, 0, "xterm", Map.of())).isEqualTo(new Screen(80, 0, true));
  }
}

package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.Walk;

/**
 * The prompt as a person meets it: the program in a pseudo-terminal, keys typed, the screen read.
 */
@EnabledOnOs(value = OS.LINUX, disabledReason = "the program script differs elsewhere")
class TerminalTest {

  private static final int SECONDS_FOR_A_KEY = 15;
  private static final char TAB = '\t';
  private static final char CONTROL_C = 3;
  private static final char UP = 'A';
  private static final String READY = "\u001b[?2004h> ";
  private static final String PASTE = "\u001b[200~";
  private static final String PASTED = "\u001b[201~";

  @TempDir private Path home;

  private PseudoTerminal terminal;

  /** Of a window, in columns; what goes on below its beginning is seen in both, always. */
  static List<Integer> widths() {
    return Walk.isWhole() ? List.of(80, 120) : List.of(80);
  }

  private void open(int columns) throws IOException {
    terminal = new PseudoTerminal(columns, home);
  }

  @AfterEach
  void close() {
    terminal.close();
  }

  private void leaves() throws InterruptedException {
    terminal.leaves();
  }

  private void type(String keys) throws IOException {
    terminal.type(keys);
  }

  private void awaits(String text) throws IOException, InterruptedException {
    terminal.awaits(text);
  }

  /**
   * Presses a key at the foot of a page until it is answered, as whoever reads does: a machine with
   * too much to do has let one fall between the terminals, once in some hundred runs.
   */
  private void press(String key, String answer) throws IOException, InterruptedException {
    type(key);
    for (int again = 0; again < 2 && !terminal.shows(answer, SECONDS_FOR_A_KEY); again++) {
      type(key);
    }
    awaits(answer);
  }

  /** The rows of a table of what was tried in an hour at the prompt and went wrong. */
  @ParameterizedTest(name = "in {0} columns")
  @MethodSource("widths")
  void whatANewUserTries_losesNothing(int columns) throws Exception {
    open(columns);
    type("area = sqft(64)\r"); // before the program is there
    awaits("exit leaves");
    awaits("area = 64 sq ft");
    type("order = sheetsByArea(area, pct(0))\r");
    awaits("order = 2 sheets");
    type("show order\r");
    awaits("no picture");
    type("order\r");
    awaits("2 sheets");
    type("explain order\r");
    awaits("deck area");

    type("area = 96\r");
    awaits("order stays 2 sheets, stale: area is 96, a number without a unit");
    type("save \"" + home.resolve("roof") + "\"\r");
    awaits("roof.xlsx with order, area");
    awaits("stale, and written with the value it has: order");
    type("save \"" + home.resolve("roof.pdf") + "\"\r");
    awaits("and no .pdf");
    type("undo\r");
    awaits("undone: area = 96");

    type(PASTE + "> a = in(1)\r> b = a.plus(in(1))\rb.plus(b)" + PASTED + "\r");
    awaits("a = 1 in");
    awaits("b = 2 in");
    awaits("4 in");
    type("list\r");
    awaits("b = 2 in   from a");

    type(
        "int slow(int n) { int i = 0; if (n > 8) { System.out.println(\"coun\" + \"ting\"); } while (i < n) { i = i + 1 - i / 5; } return n; }\r");
    type("n = 1\rc = slow(n)\r");
    awaits("c = 1");
    type("n = 9\r"); // never comes to an end
    awaits("counting");
    type(String.valueOf(CONTROL_C));
    awaits("c stays 1, stale: stopped; Enter alone goes on");
    type("undo\r");
    awaits("undone: n = 9");

    type("while (true) { System.out.println(123456 * 8); }\r");
    awaits("987648");
    TimeUnit.MILLISECONDS.sleep(500);
    type(String.valueOf(CONTROL_C));
    awaits("(cut: it printed ");
    awaits("(stopped)");
    type("System.exit(7)\r");
    awaits("the session goes on");
    type("exit\r");
    awaits("Leave? y/n");
    type("n\r");
    awaits("> ");
    type("b\r");
    awaits("2 in");
    type("exit\r");
    awaits("Leave? y/n");
    type("y\r");
    leaves();

    open(columns);
    awaits("exit leaves");
    type("resume\r");
    awaits("order = 2 sheets   from area");
    type("area = sqft(96)\r");
    awaits("order = 3 sheets (was 2 sheets)");
    type("exit\r");
    awaits("Leave? y/n");
    type("y\r");
    leaves();
  }

  @ParameterizedTest(name = "in {0} columns")
  @ValueSource(ints = {80, 120})
  void aLongRefusal_goesOnBelowItsBeginning(int columns) throws Exception {
    open(columns);
    awaits("exit leaves");
    type("deltaFactor = 1\r");
    awaits("deltaFactor = 1");
    type("given(thickness = 3 in)\r");
    awaits(
        columns == 80
            ? "thickness cannot be given for all calls, because it does not mean the same in\r\n  each; name it in the call. What can be given: spacing, species, grade, size,\r\n  value_set, code, edition, wind, exposure, ground_snow, risk_category, rise,\r\n  dead, deflection_limit, labor, tax, overhead, margin"
            : "thickness cannot be given for all calls, because it does not mean the same in each; name it in the call. What can be\r\n  given: spacing, species, grade, size, value_set, code, edition, wind, exposure, ground_snow, risk_category, rise,\r\n  dead, deflection_limit, labor, tax, overhead, margin");
    type("exit\r");
    awaits("Leave? y/n");
    type("y\r");
    leaves();
  }

  /** Further rows of it: what is typed, and what it says. */
  private static final String[][] ROWS = {
    {"pitch(5/12)", "0.4167 in 12"},
    {"3/8", "0.375"},
    {"ft(41 + 7/12)", "41' 7\""},
    {"in(1 3/8)", "1-3/8 in"},
    {"16-9 1/4 ft", "16' 9-1/4\""},
    {"12 ft", "12' 0\""},
    {"a = 24 in", "a = 24 in"},
    {"b = 1 ft", "b = 1' 0\""},
    {"a + b", "36 in"},
    {"c = b * 1.1", "c = 1' 1-3/16\""},
    {"explain c", "× 1.1"},
    {"print a", "24 in"},
    {"nailsPerSheet(in(16), in(6), in(12))", "say which is which"},
    {"nailsPerSheet(spacing = 16 in, edge = 6 in, field = 12 in)", "43 nails", "assumed: blocked"},
    {"spf", "spruce-pine-fir"},
    {"2X6", "2x6"},
    {"given(spacing = 24 in, species = SPF, grade = #2)", "no-2"},
    {"rafter = rafterCheck(size = \"2x6\", snow = 30 psf, dead = 10 psf, span = 9 ft)", "assumed:"},
    {"if (holds(rafter)) System.out.println(\"it \" + \"holds\")", "it holds"},
    {"said = \"System.exit\" + \"(7)\"", "said = \"System.exit(7)\""},
    {"Runtime.getRuntime().halt(3)", "the session goes on"},
    {"java.util.List.of(3).forEach(System::exit)", "the session goes on"},
    {"south = Plane.rectangle(\"S\", ft(24), ft(14))", "south = plane S, 336 sq ft"},
    {"rafters = Supports.every(in(24))", "rafters = supports every 24 in"},
    {"deck = layout(south, rafters)", "narrow()"},
    {"show deck", "sheet end"},
    {"unsaid = new Object()", "unsaid"},
    {"(".repeat(300) + "1" + ")".repeat(300), "300 deep in each other; 200 at most"}
  };

  @ParameterizedTest(name = "in {0} columns")
  @MethodSource("widths")
  void everyRow_isAnsweredInTheWidthOfTheWindow(int columns) throws Exception {
    open(columns);
    awaits(READY);
    for (String[] row : ROWS) {
      type(PASTE + row[0] + PASTED + "\r");
      awaits("\r\n"); // the echo ends here
      for (int i = 1; i < row.length; i++) {
        awaits(row[i]);
      }
      awaits(READY);
    }

    type("?\r");
    awaits("Enter goes on");
    press("q", READY);
    type("help cut list\r");
    awaits("cutList");
    awaits(READY);
    type("save \"" + home.resolve("roof") + "\"\r");
    awaits("no cell can hold it: unsaid");
    awaits(READY);
    type("foo(" + TAB + "12)\r"); // the key behind Tab is not eaten
    awaits("there is no unit or function \"foo\"");
    awaits(READY);

    type("nailsPerSheet\r");
    awaits("24 in, given]");
    type("\r"); // and is kept
    awaits("edge_spacing");
    type("0\r");
    awaits("must be from 1 to 24");
    type("6\r");
    awaits("field_spacing");
    type("12 in\r");
    awaits("blocked_edges");
    type("\r");
    awaits("sheet_length");
    type("\r");
    awaits("sheet_width");
    type("\r");
    awaits("> nailsPerSheet(edge_spacing = 6 in, field_spacing = 12 in)");
    awaits("nails = 33 nails/sheet"); // 2 × 9 on the ends and 3 × 5 between
    awaits(READY);
    type("\u001bO" + UP + "\r"); // the call stands in the history
    awaits("nails = 33 nails/sheet");
    type("exit\r"); // what is there is saved
    leaves();
  }

  /** A key that came while the one before was still waited for was lost, and with it the prompt. */
  @Test
  void aKeyPressedAsSoonAsAPageStands_isTaken() throws Exception {
    open(150);
    awaits(READY);
    for (char last : ("q".repeat(12) + CONTROL_C).toCharArray()) {
      type("help(\"nail\")\r");
      awaits("Enter goes on");
      press("\r", "weakestLink");
      awaits("Enter goes on");
      press(String.valueOf(last), READY);
    }
    assertThat(terminal.said()).doesNotContain("meanRoofHeight");
    type("exit\r");
    leaves();
  }

  @Test
  void aMorning_goesAsTyped() throws Exception {
    open(150);
    awaits("exit leaves");
    awaits("> ");
    type("area = sqft(64)\r");
    awaits("area = 64 sq ft");
    type("order = sheetsByArea(area, pct(0))\r");
    awaits("order = 2 sheets");
    type("area = sqft(96)\r");
    if (!terminal.shows("order = 3 sheets (was 2 sheets)", 5)) {
      awaits("Enter alone does"); // a busy machine took so long the first time that it asks
      type("\r");
    }
    awaits("order = 3 sheets");

    type("sheetsByA" + TAB + "area, pct(0))\r");
    awaits("sheets = 3 sheets");

    type("help(\"nail\")\r");
    awaits("Enter goes on");
    press("\r", "weakestLink");
    awaits("Enter goes on");
    press("q", "> ");
    assertThat(terminal.said()).doesNotContain("meanRoofHeight");
    type("help(\"nail\")\rorder * 7\r"); // no key of the next line is the pager's
    awaits("21 sheets");
    awaits("> ");

    type("nailsPerSheet(in(16), " + TAB);
    awaits("nailing: how far apart its nails stand");
    type("Nailing.edge(in(6)).field(in(12)),\r");
    awaits(". ");
    type("FOUR_BY_EIGHT)\r");
    awaits("nails = 43 nails/sheet");

    type("foo(" + TAB + "12)\r"); // the key behind Tab is not eaten
    awaits("there is no unit or function \"foo\"");
    assertThat(terminal.said()).doesNotContain("possibilities");

    type("for (int i = 0; true; i = 1) { if (i == 0) { System.out.println(123456 * 8); } }\r");
    awaits("987648"); // the loop is running, and can be stopped
    type(String.valueOf(CONTROL_C));
    awaits("(stopped)");
    awaits("> ");
    type("order\r");
    awaits("3 sheets");

    type("System.exit(7)\r");
    awaits("the session goes on");
    type("\u001bO" + UP + "\u001bO" + UP + "\r"); // two lines up in the history
    awaits("3 sheets");

    type("exit\r");
    awaits("Leave? y/n");
    type("y\r");
    leaves();
  }
}

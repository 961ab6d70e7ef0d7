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
import org.junit.jupiter.api.io.TempDir;

class ScriptTest {

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private boolean run(String text, String... arguments) throws IOException {
    Path script = folder.resolve("houses.jsh");
    Files.writeString(script, text);
    return 0
        == Script.run(
            script, List.of(arguments), new PrintWriter(out, true), new PrintWriter(err, true));
  }

  @Test
  void expressions_areShownAndDefinitionsAreNot() throws IOException {
    assertThat(run("n = sheets(2)\n\n// a remark\nn.plus(n)\n")).isTrue();
    assertThat(out).hasToString("4 sheets\n");
  }

  @Test
  void arguments_standInTheScript() throws IOException {
    assertThat(run("sheetsByArea(sqft(Double.parseDouble(args[1])), pct(0))\n", "a \"b\"", "96"))
        .isTrue();
    assertThat(out).hasToString("sheets = 3 sheets\n");
  }

  @Test
  void aLineThatBeginsWithADot_belongsToTheOneBefore() throws IOException {
    assertThat(run("n = List.of(3, 4, 5)\n    .stream()\n    .mapToInt(i -> i)\n    .sum()\nn\n"))
        .isTrue();
    assertThat(out).hasToString("12\n");
  }

  @Test
  void theFirstFailingLine_endsItAndIsNamed() throws IOException {
    assertThat(run("n = sheets(2)\nfor (int i = 0; i < 2; i++) {\n}\nn.plus(pct(3))\nn\n"))
        .isFalse();
    assertThat(out).hasToString("");
    assertThat(err.toString()).startsWith("houses.jsh:4: 3 % cannot be added to 2 sheets");
  }

  @Test
  void aRefusal_failsTheLine() throws IOException {
    assertThat(run("sheetsByArea(sqft(64), pct(0))\nsheetsByArea(sqft(0), pct(0))\n")).isFalse();
    assertThat(out).hasToString("sheets = 2 sheets\n");
    assertThat(err.toString()).startsWith("houses.jsh:2: deck_area_sf is 0; it must be from 1");
  }

  @Test
  void anUnfinishedLine_isNamedWhereItBegins() throws IOException {
    assertThat(run("n = sheets(2)\nn.plus(\n")).isFalse();
    assertThat(err.toString()).startsWith("houses.jsh:2: ");
  }

  @Test
  void aPipe_isAnsweredLineByLine() {
    BufferedReader in = new BufferedReader(new StringReader("n = sheets(2)\nn.plus(n)\n"));
    assertThat(Script.pipe(in, new PrintWriter(out), new PrintWriter(err))).isZero();
    assertThat(out).hasToString("n = 2 sheets\n4 sheets\n");
  }

  @Test
  void anErrorInsideAMethod_isNamedWhereItStands() throws IOException {
    assertThat(run("a = ft(3)\n\nint bad(int f) {\n\n  return f.nosuch();\n}\n")).isFalse();
    assertThat(err.toString()).startsWith("houses.jsh:5: ");
  }

  @Test
  void anElseOnItsOwnLine_belongsToTheIf() throws IOException {
    assertThat(run("# a remark\nint n = 0;\nif (n > 1) {\n  n = 5;\n}\nelse {\n  n = 7;\n}\nn\n"))
        .isTrue();
    assertThat(out).hasToString("7\n");
  }

  @Test
  void aByteOrderMark_isNoPartOfTheFirstLine() throws IOException {
    assertThat(run("\uFEFFsheets(2)\n")).isTrue();
    assertThat(out).hasToString("2 sheets\n");
  }

  @Test
  void aLineAmongPlainOnes_isNamedWhereItFails() throws IOException {
    assertThat(run("a = in(3)\nb = in(4)\na\nc = a.plus(b)\nnone(c)\nc\n")).isFalse();
    assertThat(out).hasToString("3 in\n");
    assertThat(err.toString()).startsWith("houses.jsh:5: there is no \"none\"");
  }

  @Test
  void aNameMadeBeforeByAPlainLine_isNamedAsTheNearest() throws IOException {
    assertThat(run("eaveLength = in(3)\nother = in(4)\neaveLenght\n")).isFalse();
    assertThat(err.toString()).contains("\"eaveLenght\"").contains("eaveLength");
  }

  @Test
  void plainLines_carryAlongWhatIsMadeFromThem_whereverItStands() throws IOException {
    String lines =
        """
        a = in(1)
        b = a.plus(in(1))
        c = b.plus(in(1))
        a = in(10)
        c
        for (int i = 0; i < 2; i++) { a = a.plus(in(1)); }
        b
        a = in(100)
        c
        """;
    assertThat(run(lines)).isTrue();
    assertThat(out).hasToString("12 in\n11 in\n102 in\n");
  }

  @Test
  void aNameGivenAnotherKindOfValue_byAPlainLine_isOfThatKind() throws IOException {
    assertThat(run("a = in(1)\nb = a\na = sheets(2)\na.plus(sheets(3))\nb\n")).isTrue();
    assertThat(out).hasToString("5 sheets\n2 sheets\n");
  }

  @Test
  void aNameMadeFromItself_standsAsItIs() throws IOException {
    assertThat(run("a = in(1)\nb = a\na = a.plus(in(1))\na = a.plus(in(1))\nb\n")).isTrue();
    assertThat(out).hasToString("3 in\n");
  }

  @Test
  void aMethod_seesWhatPlainLinesMade_beforeAndAfterIt() throws IOException {
    String lines = "a = in(1)\nb = in(2)\nObject f() { return a.plus(b); }\nb = in(5)\nf()\n";
    assertThat(run(lines)).isTrue();
    assertThat(out).hasToString("6 in\n");
  }

  @Test
  void aPipe_saysWhatIsCarriedAlong() {
    String lines = "a = in(1)\nb = a.plus(in(1))\na = in(3)\n";
    BufferedReader in = new BufferedReader(new StringReader(lines));
    assertThat(Script.pipe(in, new PrintWriter(out), new PrintWriter(err))).isZero();
    assertThat(out).hasToString("a = 1 in\nb = 2 in\na = 3 in\n  b = 4 in (was 2 in)\n");
  }
}

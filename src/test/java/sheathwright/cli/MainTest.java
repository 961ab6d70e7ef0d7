package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Writer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {

  private static Stream<String> commands() {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    return Main.commandLine(nowhere, nowhere).getSubcommands().keySet().stream();
  }

  @Test
  void main_hasTheCommandsThatItsDocumentsName() {
    assertThat(commands()).contains("quote", "fill", "functions", "explain");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"rubbish", "--rubbish"})
  void main_withAnUnknownCommandIsWrongUse(String rubbish) {
    CommandRun ran = CommandRun.of(rubbish);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(rubbish);
  }

  @Test
  void main_helpsOnStandardOutput() {
    CommandRun ran = CommandRun.of("--help");
    assertThat(ran.status()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("Usage: sheathwright ");
    assertThat(commands()).allSatisfy(command -> assertThat(ran.out()).contains(command));
  }

  @ParameterizedTest(name = "{0} --help")
  @MethodSource("commands")
  void main_helpsWithEachCommand(String command) {
    CommandRun ran = CommandRun.of(command, "--help");
    assertThat(ran.status()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .startsWith("Usage: sheathwright " + command + " ")
        .contains("Example")
        .contains("  sheathwright " + command);
  }

  @Test
  void main_saysItsVersion() {
    CommandRun ran = CommandRun.of("--version");
    assertThat(ran.status()).isZero();
    assertThat(ran.out()).matches("sheathwright \\d+\\.\\d+\\.\\d+\\R");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"fill", "quote", "explain"})
  void main_withACommandButNothingToDoIsWrongUse(String command) {
    CommandRun ran = CommandRun.of(command);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).startsWith("Missing required parameter");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "quote demo-data/quince-hollow -o a%s -o b | -o is given more than once, as a%s and b;",
        "fill nails_per_sheet cases.csv -o a.csv -o b.csv | -o is given more than once, as a.csv and b.csv;",
        "quote demo-data/quince-hollow --force --force | --force is given more than once;",
        "explain sheets_by_area waste_pct=5 waste_pct=7 | waste_pct is given more than once, as 5 and 7;",
        "solve cut_stock cases.csv kerf_in=0 kerf_in=1/8 | kerf_in is given more than once, as 0 and 1/8;"
      })
  void main_refusesWhatIsGivenTwice(String command, String refusal) {
    CommandRun ran = CommandRun.of((Object[]) command.split(" "));
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).startsWith(refusal);
  }

  @Test
  void main_refusesAnOptionWithNothingBehindIt() {
    CommandRun ran = CommandRun.of("quote", "demo-data/quince-hollow", "-o", "");
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).startsWith("-o is given with nothing behind it;");
  }
}

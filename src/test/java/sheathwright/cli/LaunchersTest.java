package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the launchers give to Java, on Windows and elsewhere, so far as their text tells. */
class LaunchersTest {

  private static final Pattern OPTION = Pattern.compile("-(?:XX:|X|D)[\\w.:+]+(?:=[\\w.]+)?");

  @Test
  void launchers_giveJavaTheSameOptions() throws IOException {
    String windows = Files.readString(Path.of("sheathwright.cmd"));
    String others = Files.readString(Path.of("sheathwright"));
    assertThat(OPTION.matcher(others).results().map(MatchResult::group).distinct())
        .filteredOn(option -> !option.equals("-Djansi.noreset=true")) // for Maven's output there
        .filteredOn(option -> !option.startsWith("-XX:TieredStopAtLevel"))
        .hasSizeGreaterThan(7)
        .allSatisfy(option -> assertThat(windows).contains(option));
    assertThat(windows).contains("if \"%~1\"==\"solve\" set \"compiler=4\"");
    assertThat(others).contains("[ \"${1:-}\" != solve ] || options[0]=-XX:TieredStopAtLevel=4");
  }

  /** Java reads from the jar that its terminal may call the system's library, and warns not. */
  @Test
  void launchers_startTheJarWhoseManifestAllowsTheTerminalItsLibrary() throws IOException {
    assertThat(Files.readString(Path.of("pom.xml")))
        .contains("<Enable-Native-Access>ALL-UNNAMED</Enable-Native-Access>");
    assertThat(Files.readString(Path.of("sheathwright")))
        .contains("-jar \"$target/sheathwright.jar\" \"$@\"");
    assertThat(Files.readString(Path.of("sheathwright.cmd"))).contains("-jar \"%jar%\" %*");
  }
}

package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The estimator's guide, typed line by line; each answer is compared with what the guide says. */
class EstimatorGuideTest {

  private static final Pattern BLOCK = Pattern.compile("(?s)```session\n(.*?)```");

  @Test
  void everyLineOfTheGuide_isAnsweredAsTheGuideSays() throws IOException {
    List<String> said = new ArrayList<>();
    List<String> answered = new ArrayList<>();
    Matcher blocks = BLOCK.matcher(Files.readString(Path.of("docs", "estimator.md")));
    try (Session session = new Session()) {
      while (blocks.find()) {
        for (String exchange : blocks.group(1).split("(?m)^> ")) {
          if (!exchange.isBlank()) {
            said.add("> " + exchange.strip());
            String typed = exchange.lines().findFirst().orElseThrow();
            answered.add("> " + typed + "\n" + answer(session, typed));
          }
        }
      }
    }
    assertThat(answered).hasSizeGreaterThan(12).containsExactlyElementsOf(said);
  }

  static String answer(Session session, String line) {
    return session.answers(line).stream().map(Answer::text).collect(Collectors.joining("\n"));
  }
}

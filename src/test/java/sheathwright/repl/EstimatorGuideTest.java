package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.repl.SessionPage.Exchange;

/** The estimator's guide, typed line by line; each answer is compared with what the guide says. */
class EstimatorGuideTest {

  private static final int TEN_MINUTES = 250;

  @TempDir Path folder;

  @Test
  void everyLineOfTheGuide_isAnsweredAsTheGuideSays() throws IOException {
    SessionPage guide = SessionPage.of("estimator.md");
    List<String> answered = new ArrayList<>();
    try (Session session = new Session()) {
      for (Exchange exchange : guide.exchanges()) {
        answered.add(exchange.answered(session, folder));
      }
    }
    assertThat(answered)
        .hasSizeGreaterThan(12)
        .containsExactlyElementsOf(guide.exchanges().stream().map(Exchange::shown).toList());
  }

  @Test
  void theSessionOfTheReadme_isTrue() throws IOException {
    SessionPage readme = SessionPage.of("../README.md");
    try (Session session = new Session()) {
      for (Exchange exchange : readme.exchanges()) {
        assertThat(exchange.answered(session, folder)).isEqualTo(exchange.shown());
      }
    }
    assertThat(readme.exchanges()).isNotEmpty();
  }

  @Test
  void theGuide_isReadInTenMinutes_andFitsAWindow() throws IOException {
    SessionPage guide = SessionPage.of("estimator.md");
    assertThat(guide.text().lines()).hasSizeLessThan(TEN_MINUTES);
    assertThat(guide.tooWide()).isEmpty();
  }

  static String answer(Session session, String line) {
    return session.answers(line).stream().map(Answer::text).collect(Collectors.joining("\n"));
  }
}

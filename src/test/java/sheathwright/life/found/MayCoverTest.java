package sheathwright.life.found;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.table.JobText;

/** IRC R908.3, second hand: what asks for stripping before another covering goes on. */
class MayCoverTest {

  @ParameterizedTest
  @CsvSource({
    "2, sound, no: two layers",
    "3, not-seen, no: two layers",
    "1, water-soaked, no: the covering is water-soaked",
    "1, deteriorated, no: the covering has gone so far",
    "1, tile, no: slate",
    "1, sound, the code does not forbid it",
    "1, not-seen, nobody knows yet: look",
    "'', sound, nobody knows yet: count",
    "'', '', nobody knows yet: look",
    "'', water-soaked, no: the covering is water-soaked",
  })
  void theAnswer_followsLayersAndCovering(String layers, String covering, String answer) {
    JobText job = JobText.small();
    if (!layers.isEmpty()) {
      job = job.withLines("job", "layers_on," + layers + ",");
    }
    if (!covering.isEmpty()) {
      job = job.withLines("job", "old_covering," + covering + ",");
    }
    assertThat(MayCover.answer(job.job()).value()).startsWith(answer);
  }
}

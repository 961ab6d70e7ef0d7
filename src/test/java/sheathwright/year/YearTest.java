package sheathwright.year;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Years from their seeds hold. The gate plays a few; {@code -Dyears=10000} plays so many, {@code
 * -Dfirst=123} from that seed on, and of one year alone all tables are told where it breaks.
 */
class YearTest {

  private static final int IN_THE_GATE = 20;
  private static final int YEARS = Integer.getInteger("years", IN_THE_GATE);
  private static final long FIRST = Long.getLong("first", 1);
  private static final int MOST_TOLD = 20;

  @Test
  void everyYearHolds() {
    Map<Long, String> broken = new LinkedHashMap<>();
    Tally tally = new Tally(FIRST, YEARS);
    LongStream.range(FIRST, FIRST + YEARS)
        .takeWhile(seed -> broken.size() < MOST_TOLD)
        .forEach(
            seed -> {
              Year year = new Year(seed, Spoil.NOTHING);
              try {
                year.played();
              } catch (AssertionError fault) {
                System.out.println(firstLines(fault));
                broken.put(seed, YEARS == 1 ? fault.getMessage() : firstLines(fault));
              }
              tally.count(year, broken);
            });
    assertThat(broken.values()).isEmpty();
  }

  private static String firstLines(AssertionError fault) {
    return String.join("\n", fault.getMessage().lines().limit(8).toList());
  }

  /** Each of them once broke; they are played ever after, as seeds 7 and 9 are among the twenty. */
  @ParameterizedTest
  @CsvFileSource(resources = "seeds.csv", numLinesToSkip = 1)
  void aYearThatOnceBroke_holds(long seed, String found) {
    assumeTrue(YEARS == IN_THE_GATE, "asked for others");
    new Year(seed, Spoil.NOTHING).played();
  }

  /** What is planted behind the program's back is found: nothing here is blind. */
  @ParameterizedTest
  @CsvSource({
    "BILL_TWICE, is billed as",
    "LOSE_A_CENT, and its lines",
    "LOSE_A_MARK, marks are lost",
    "FORGET_A_STOP, stops are lost",
    "HALF_A_FILE, is half written",
    "HALF_A_DOCUMENT, is not what was sent",
    "LITTER, litter: /firm/",
    "TELL_A_COST, holds a cost: ",
    "CLOSE_TWICE, the history tells of it 2 times",
  })
  void aPlantedDefect_isReported(Spoil spoil, String said) {
    assumeTrue(YEARS == IN_THE_GATE, "asked for others");
    assertThatThrownBy(() -> new Year(1, spoil).played())
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining(said);
  }

  /** The same seed is the same year. */
  @Test
  void aSeed_isAlwaysTheSameYear() {
    assumeTrue(YEARS == IN_THE_GATE, "asked for others");
    List<Map<Mishap, Integer>> twice =
        Stream.of(3L, 3L).map(seed -> new Year(seed, Spoil.NOTHING).played().befallen()).toList();
    assertThat(twice.get(0)).isEqualTo(twice.get(1));
  }
}

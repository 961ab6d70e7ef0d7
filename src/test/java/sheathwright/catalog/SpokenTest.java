package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Option;

/** Words as people say them. */
class SpokenTest {

  /** Words of the table, of the trade and another spelling. */
  enum Lumber implements Option<Lumber> {
    SPRUCE_PINE_FIR("", "SPF"),
    SOUTHERN_PINE("", "SYP", "SP"),
    SOUTHERN_OAK("", new String[0]),
    NO_2("second", new String[0]);

    private final String other;
    private final List<String> trade;

    Lumber(String other, String... trade) {
      this.other = other;
      this.trade = List.of(trade);
    }

    @Override
    public String alsoWritten() {
      return other;
    }

    @Override
    public List<String> inTheTrade() {
      return trade;
    }
  }

  /** Words that are no more than their names. */
  enum Plain {
    ON,
    OFF
  }

  @ParameterizedTest
  @CsvSource({
    "spruce-pine-fir, SPRUCE_PINE_FIR",
    "Spruce Pine_Fir, SPRUCE_PINE_FIR",
    "' spf ',         SPRUCE_PINE_FIR",
    "spruce,          SPRUCE_PINE_FIR",
    "Spruce  Pine,    SPRUCE_PINE_FIR",
    "SYP,             SOUTHERN_PINE",
    "sp,              SOUTHERN_PINE",
    "southern-o,      ",
    "southern,        ",
    "spru,            ",
    "pine,            ",
    "'',              ",
    "no-2,            NO_2",
    "#2,              NO_2",
    "No. 2,           NO_2",
    "no 2,            NO_2",
    "no_2,            NO_2",
    "NO2,             NO_2",
    "Second,          NO_2",
  })
  void option_isTheOneThatIsNamedOrBegunAlone(String said, Lumber meant) {
    assertThat(Spoken.option(said, Lumber.class).orElse(null)).isEqualTo(meant);
  }

  @Test
  void option_withoutWordsIsNamedAsInJava() {
    assertThat(Spoken.option("off", Plain.class)).contains(Plain.OFF);
    assertThat(Spoken.option("of", Plain.class)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"spf", " SPF ", "spruce pine fir", "SPRUCE_PINE_FIR"})
  void names_inFull(String said) {
    assertThat(Spoken.names(said, Lumber.SPRUCE_PINE_FIR)).isTrue();
    assertThat(Spoken.names(said, Lumber.SOUTHERN_PINE)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"spruce", "", "-"})
  void names_notByHalf(String said) {
    assertThat(Spoken.names(said, Lumber.SPRUCE_PINE_FIR)).isFalse();
  }

  @Test
  void words_haveTheTradesBehindThem() {
    assertThat(Spoken.words(Lumber.class))
        .containsExactly(
            "spruce-pine-fir (SPF)", "southern-pine (SYP, SP)", "southern-oak", "no-2");
    assertThat(Spoken.words(Plain.class)).containsExactly("ON", "OFF");
  }
}

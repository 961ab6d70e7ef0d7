package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;

/** Arguments that are typed behind a function's name. */
class StartingValuesTest {

  private static final Card CUT = MadeFunctions.card("cutOff");

  @Test
  void arguments_standInTheFunctionsOrderAndTakeTheirPresets() {
    List<Traced> read =
        StartingValues.read(CUT, List.of("kind=soft", "wood=hard maple", "length_in=4 ft"));
    assertThat(read).extracting(Traced::plain).containsExactly("48", "hard-maple", "0.125", "soft");
    assertThat(read)
        .extracting(Traced::name)
        .containsExactly("length_in", "wood", "saw_in", "kind");
    assertThat(read).extracting(Traced::source).containsOnly(Source.GIVEN);
  }

  @Test
  void argument_thatTheFunctionDoesNotTakeIsNamed() {
    assertThatIllegalStateException()
        .isThrownBy(
            () ->
                StartingValues.read(
                    CUT, List.of("length_in=4", "woods=hard", "wood=soft", "kind=soft")))
        .withMessage("cut_off has no parameter for [woods=hard]");
  }

  @Test
  void function_withoutStartingValuesIsNamed() {
    assertThatIllegalStateException()
        .isThrownBy(() -> StartingValues.of(CUT))
        .withMessage("starting-values.properties says nothing of cut_off");
  }

  /** As the file has them for this function. */
  @Test
  void shippedFunction_hasItsOwn() {
    Card card = Catalog.shipped().named("slope_length");
    assertThat(StartingValues.pairs(card)).containsExactly("run_ft=15", "rise_in_12=6");
    assertThat(StartingValues.of(card)).extracting(Traced::plain).containsExactly("15", "6");
  }
}

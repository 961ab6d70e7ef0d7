package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheathwright.catalog.MadeFunctions.Plank;
import sheathwright.catalog.MadeFunctions.Stack;
import sheathwright.catalog.MadeFunctions.Wood;
import sheathwright.figure.Limits;
import sheathwright.figure.Units;

/** What a function takes: the parts of things and plain values, each with its column. */
class CardParametersTest {

  private static Parameter parameter(String column) {
    return MadeFunctions.card("cutOff").parameter(column);
  }

  @Test
  void parameters_standInTheMethodsOrderAPartEach() {
    assertThat(MadeFunctions.card("cutOff").parameters())
        .extracting(Parameter::column)
        .containsExactly("length_in", "wood", "saw_in", "kind");
    assertThat(MadeFunctions.card("cutOff").parameters())
        .extracting(Parameter::javaName)
        .containsExactly("length", "wood", "saw", "kind");
  }

  @Test
  void prefixes_standBeforeEachOther() {
    assertThat(MadeFunctions.card("stacked").parameters())
        .extracting(Parameter::column)
        .containsExactly("our_top_length_in", "our_top_wood", "our_length_in", "our_wood");
  }

  @Test
  void number_hasUnitLimitsAndPreset() {
    Parameter saw = parameter("saw_in");
    assertThat(saw.unit()).isEqualTo(Units.INCH);
    assertThat(saw.options()).isNull();
    assertThat(saw.preset()).isEqualTo("0.125");
    assertThat(saw.isRequired()).isFalse();
    assertThat(saw.limits()).isEqualTo(Limits.between(0, 1, "a blade"));
    assertThat(saw.text()).isEqualTo("what the saw takes, 0 in to 1 in");
    assertThat(saw.saysWhich()).isEmpty();
    assertThat(saw.words()).isEmpty();
    assertThat(saw.spoken()).isEmpty();
  }

  @Test
  void number_hasWhatIsAssumed() {
    assertThat(parameter("saw_in").assumed())
        .extracting(Assumed::value)
        .containsExactly("0.25", "0.5");
    assertThat(parameter("length_in").assumed()).isEmpty();
  }

  @Test
  void word_hasOptionsAndNoUnit() {
    Parameter kind = parameter("kind");
    assertThat(kind.unit()).isNull();
    assertThat(kind.options()).isEqualTo(Wood.class);
    assertThat(kind.limits()).isEqualTo(Limits.NONE);
    assertThat(kind.text()).isEqualTo("the kind");
    assertThat(kind.isRequired()).isTrue();
    assertThat(kind.saysWhich()).isEqualTo("length_in");
    assertThat(kind.words()).containsExactly("soft", "hard-maple");
    assertThat(kind.spoken()).containsExactly("soft", "hard-maple");
  }

  @Test
  void arguments_areThingsAndPlainOnes() {
    assertThat(MadeFunctions.card("cutOff").arguments())
        .extracting(Argument::javaName)
        .containsExactly("plank", "saw", "kind");
    assertThat(MadeFunctions.card("cutOff").arguments())
        .extracting(Argument::text)
        .containsExactly("what is cut", "what the saw takes, 0 in to 1 in", "the kind");
    assertThat(MadeFunctions.card("cutOff").arguments().get(1).things()).isEmpty();
    Argument stack = MadeFunctions.card("stacked").arguments().get(0);
    assertThat(stack.things()).containsExactly(Stack.class, Plank.class, Plank.class);
  }

  @Test
  void parameter_isNullForAColumnThatIsNotThere() {
    assertThat(parameter("saw")).isNull();
  }
}

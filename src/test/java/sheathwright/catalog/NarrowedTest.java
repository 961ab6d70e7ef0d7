package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** A function that allows less of a part than its thing says so, in help and in refusals. */
class NarrowedTest {

  private static final String RULE = "a short one";

  /**
   * A stick.
   *
   * @param length end to end
   */
  public record Stick(
      @Column(value = "length_in", least = 0, most = 48, rule = "any stick", symbol = "L")
          Figure<Length> length) {

    public Stick {
      length = Columns.of(Stick.class).let("length", length);
    }
  }

  /** The longer and the shorter of two sticks, where the second is short. */
  @LibraryFunction
  @Column("both_in")
  public static Figure<Length> both(
      Stick one,
      @Column(prefix = "short_")
          @Narrowed(column = "short_length_in", least = 0, most = 12, rule = RULE)
          Stick two) {
    return one.length().plus(two.length().within("length_in", Units.INCH, shortOnes()));
  }

  private static Limits shortOnes() {
    return Limits.between(0, 12, RULE);
  }

  private static Card card() {
    Properties index = new Properties();
    index.setProperty(Stick.class.getName() + ".param.length", "end to end");
    return new CardReader(index).card(NarrowedTest.class.getName() + "#both");
  }

  @Test
  void column_statesWhatTheFunctionAllows() {
    assertThat(card().parameter("short_length_in").limits()).isEqualTo(shortOnes());
    assertThat(card().parameter("short_length_in").text()).isEqualTo("end to end, 0 in to 12 in");
    assertThat(card().parameter("length_in").text()).isEqualTo("end to end, 0 in to 48 in");
  }

  @ParameterizedTest
  @CsvSource({"-1", "12.5", "49"})
  void refusal_tellsTheRangeThatHoldsHere(double inches) {
    Figure<?> given =
        Figure.input("short_length_in", inches, Units.INCH, Limits.NONE, Source.GIVEN);
    Figure<?> answer = (Figure<?>) card().answer(List.of(Figure.of(1, Units.INCH), given)).get(0);
    assertThat(answer.refusal().orElseThrow().reason())
        .startsWith("short_length_in is ")
        .endsWith("it must be from 0 to 12, a short one");
  }

  @Test
  void aWiderGuardDoesNotLoosenANarrowerOne() {
    Figure<Length> tight = Figure.of(20, Units.INCH).within("length_in", Units.INCH, shortOnes());
    assertThat(new Stick(tight).length().refusal().orElseThrow().reason()).contains("0 to 12");
  }

  @Test
  void narrowedPart_keepsItsSymbol() {
    Figure<Length> part = new Stick(Figure.of(3, Units.INCH)).length();
    assertThat(part.within("length_in", Units.INCH, shortOnes()).symbol())
        .isEqualTo(part.symbol())
        .isEqualTo("L");
  }
}

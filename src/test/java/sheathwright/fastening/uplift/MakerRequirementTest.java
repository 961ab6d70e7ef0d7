package sheathwright.fastening.uplift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sheathwright.fastening.uplift.MakerRequirement.Sense.AT_LEAST;
import static sheathwright.fastening.uplift.MakerRequirement.Sense.AT_MOST;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.psf;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

class MakerRequirementTest {

  private static MakerRequirement gap(MakerRequirement.Sense sense, double found) {
    return MakerRequirement.of("gap between boards", sense, in(0.25), in(found), "photograph 4");
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "AT_MOST, 0.24, true",
    "AT_MOST, 0.25, true",
    "AT_MOST, 0.26, false",
    "AT_LEAST, 0.24, false",
    "AT_LEAST, 0.25, true",
    "AT_LEAST, 0.26, true"
  })
  void met_isSoOnItsOwnSideOfTheLimit(MakerRequirement.Sense sense, double found, boolean met) {
    assertThat(gap(sense, found).met().holds()).isEqualTo(met);
  }

  @Test
  void found_isBroughtToTheUnitOfWhatIsRequired() {
    var clips = MakerRequirement.of("clip spacing", AT_MOST, in(24), ft(2), "");
    assertThat(clips.met().holds()).isTrue();
    assertThat(clips.found()).hasToString("24 in");
    assertThat(clips).hasToString("clip spacing: at most 24 in, found 24 in, met");
  }

  @Test
  void whatNobodyMeasured_isNotShownYet() {
    var clips =
        MakerRequirement.of(
            "clip spacing", AT_MOST, in(24), Figure.none(Figure.NOT_MEASURED, Units.INCH), "");
    assertThat(clips).asString().endsWith("not shown yet");
    assertThat(gap(AT_MOST, 0.26)).asString().endsWith("NOT met");
  }

  @Test
  void of_refusesWhatCannotBeCompared() {
    var length = Choice.literal("x");
    assertThatThrownBy(
            () ->
                new MakerRequirement(
                        length, in(1), Choice.literal(AT_LEAST), psf(1), Choice.literal(""))
                    .met())
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("do not measure the same thing");
  }

  @Test
  void roll_countsWhatIsNotMet() {
    Roll roll =
        MakerRequirement.roll(
            List.of(
                MakerRequirement.of("deck", AT_LEAST, in(15.0 / 32), in(7.0 / 16), "stamp"),
                gap(AT_MOST, 0.125),
                MakerRequirement.of("uplift", AT_LEAST, psf(60), psf(45), "")));
    assertThat(MakerRequirement.unmet(roll).value()).isEqualTo(2);
    assertThat(roll.cellsOf("met"))
        .extracting(cell -> cell.plain())
        .containsExactly("no", "yes", "no");
    assertThat(roll.cellsOf("unit"))
        .extracting(cell -> cell.plain())
        .containsExactly("inches", "inches", "psf");
    assertThat(roll.cellsOf("evidence").get(0).plain()).isEqualTo("stamp");
    assertThat(roll.cellsOf("requirement"))
        .extracting(cell -> cell.plain())
        .containsExactly("deck", "gap between boards", "uplift");
    assertThat(roll.cellsOf("sense"))
        .extracting(cell -> cell.plain())
        .containsExactly("at-least", "at-most", "at-least");
    assertThat(roll.cellsOf("required"))
        .extracting(cell -> cell.plain())
        .containsExactly("0.46875", "0.25", "60");
    assertThat(roll.cellsOf("found"))
        .extracting(cell -> cell.plain())
        .containsExactly("0.4375", "0.125", "45");
  }

  /** A change of the word, as in a workbook's drop-down, changes the answer. */
  @Test
  void met_readsTheSenseAsAWordThatMayChange() {
    var sense = Choice.input("sense", AT_MOST, Source.GIVEN);
    var requirement =
        new MakerRequirement(
            Choice.literal("spacing"), in(6), sense, in(4), Choice.literal("tape in the picture"));
    assertThat(requirement.met().holds()).isTrue();
    assertThat(requirement.met().step().operands()).hasSize(2);
  }
}

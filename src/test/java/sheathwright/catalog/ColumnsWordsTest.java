package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheathwright.catalog.MadeFunctions.Wood;
import sheathwright.figure.Choice;
import sheathwright.figure.OneOf;
import sheathwright.figure.Source;

/** Words are let through the columns of a thing. */
class ColumnsWordsTest {

  private static final Columns COLUMNS = Columns.of(Board.class);

  /** A board. */
  public record Board(
      @Column("wood") OneOf<Wood> wood,
      @Column(value = "core", preset = "hard-maple") OneOf<Wood> core) {}

  @Test
  void word_saidInPassingTakesTheColumnsName() {
    Choice<Wood> soft = COLUMNS.let("wood", Wood.SOFT);
    assertThat(soft.value()).isEqualTo(Wood.SOFT);
    assertThat(soft.name()).isEqualTo("wood");
    assertThat(COLUMNS.of("sister").let("wood", Wood.SOFT).name()).isEqualTo("sister_wood");
  }

  @Test
  void word_letThroughOnceTakesItsOwnersName() {
    Choice<Wood> once = COLUMNS.let("wood", Wood.SOFT);
    assertThat(COLUMNS.of("sister").let("wood", once).name()).isEqualTo("sister_wood");
    assertThat(COLUMNS.let("wood", once).name()).isEqualTo("wood");
  }

  @Test
  void word_withANameOfItsOwnKeepsIt() {
    Choice<Wood> named = Choice.literal(Wood.SOFT).as("floor");
    assertThat(COLUMNS.of("sister").let("wood", named).name()).isEqualTo("floor");
    Choice<Wood> input = Choice.input("wood", Wood.SOFT, Source.GIVEN);
    assertThat(COLUMNS.of("sister").let("wood", input).name()).isEqualTo("wood");
  }

  @Test
  void nothing_isMissingOrThePreset() {
    OneOf<Wood> nothing = null;
    assertThat(COLUMNS.let("wood", nothing).refusal().orElseThrow().reason())
        .isEqualTo("wood is missing; give one of soft, hard-maple");
    assertThat(COLUMNS.of("sister").let("wood", nothing).refusal().orElseThrow().reason())
        .isEqualTo("sister_wood is missing; give one of soft, hard-maple");
    assertThat(COLUMNS.let("core", nothing).value()).isEqualTo(Wood.HARD_MAPLE);
    assertThat(COLUMNS.let("core", nothing).name()).isEqualTo("core");
    assertThat(COLUMNS.of("sister").let("core", nothing).name()).isEqualTo("sister_core");
  }
}

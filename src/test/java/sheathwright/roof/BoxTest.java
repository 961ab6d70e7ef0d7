package sheathwright.roof;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** By hand, on squared paper. */
class BoxTest {

  private static final Box SHEET = Box.at(3, 5, 96, 48);

  @Test
  void sizesAndMiddle_areAsMeasured() {
    assertThat(SHEET).isEqualTo(new Box(3, 5, 99, 53));
    assertThat(SHEET.width()).isEqualTo(96);
    assertThat(SHEET.height()).isEqualTo(48);
    assertThat(SHEET.area()).isEqualTo(32 * 144);
    assertThat(SHEET.middleX()).isEqualTo(51);
    assertThat(SHEET.middleY()).isEqualTo(29);
  }

  @Test
  void overlaps_takesMoreThanALine() {
    assertThat(SHEET.overlaps(Box.at(98, 52, 10, 10))).isTrue();
    assertThat(Box.at(98, 52, 10, 10).overlaps(SHEET)).isTrue();
    assertThat(SHEET.overlaps(Box.at(99, 5, 96, 48))).isFalse();
    assertThat(SHEET.overlaps(Box.at(-93, 5, 96, 48))).isFalse();
    assertThat(SHEET.overlaps(Box.at(3, 53, 96, 48))).isFalse();
    assertThat(SHEET.overlaps(Box.at(3, -43, 96, 48))).isFalse();
  }

  @Test
  void holds_letsTheOtherLieAlongAnEdge() {
    assertThat(SHEET.holds(SHEET)).isTrue();
    assertThat(SHEET.holds(new Box(2, 5, 99, 53))).isFalse();
    assertThat(SHEET.holds(new Box(3, 4, 99, 53))).isFalse();
    assertThat(SHEET.holds(new Box(3, 5, 100, 53))).isFalse();
    assertThat(SHEET.holds(new Box(3, 5, 99, 54))).isFalse();
  }

  @Test
  void twoBoxes_haveACommonPart_andOneRoundBoth() {
    Box other = new Box(-1, 10, 50, 70);
    assertThat(SHEET.and(other)).isEqualTo(new Box(3, 10, 50, 53));
    assertThat(other.and(SHEET)).isEqualTo(new Box(3, 10, 50, 53));
    assertThat(SHEET.with(other)).isEqualTo(new Box(-1, 5, 99, 70));
    assertThat(other.with(SHEET)).isEqualTo(new Box(-1, 5, 99, 70));
  }

  @Test
  void grown_isLargerOnEverySide() {
    assertThat(SHEET.grown(2)).isEqualTo(new Box(1, 3, 101, 55));
  }
}

package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.loads.wind.ConvexPart.Cut;
import sheathwright.roof.Spot;

/** By hand, on squared paper: a square of 10 by 10 and what a straight cut leaves of it. */
class ConvexPartTest {

  private static final ConvexPart SQUARE =
      new ConvexPart(List.of(new Spot(0, 0), new Spot(10, 0), new Spot(10, 10), new Spot(0, 10)));

  @Test
  void aCutThroughTheSides_makesTwoCorners() {
    ConvexPart left = new Cut(1, 0, 4).within(SQUARE);
    assertThat(left.corners())
        .containsExactlyInAnyOrder(
            new Spot(0, 0), new Spot(4, 0), new Spot(4, 10), new Spot(0, 10));
    assertThat(left.area()).isEqualTo(40);
    assertThat(new Cut(1, 0, 4).beyond(SQUARE).area()).isEqualTo(60);
  }

  @Test
  void aCutThroughCorners_leavesNoneTwice() {
    assertThat(new Cut(1, -1, 0).within(SQUARE).corners())
        .containsExactlyInAnyOrder(new Spot(0, 0), new Spot(10, 10), new Spot(0, 10));
    assertThat(new Cut(1, -1, 0).beyond(SQUARE).corners())
        .containsExactlyInAnyOrder(new Spot(0, 0), new Spot(10, 10), new Spot(10, 0));
    assertThat(new Cut(1, 0, 10).within(SQUARE).corners()).hasSize(4).doesNotHaveDuplicates();
    assertThat(new Cut(1, 0, 10).beyond(SQUARE).isEmpty()).isTrue();
    assertThat(SQUARE.isEmpty()).isFalse();
  }
}

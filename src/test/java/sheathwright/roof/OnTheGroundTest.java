package sheathwright.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * By hand, with a compass: who looks up a slope that faces south looks north, east at the right.
 */
class OnTheGroundTest {

  private static final Offset<Double> CLOSE = within(1e-9);
  private static final Spot FOOT = new Spot(100, 50);

  @ParameterizedTest
  @CsvSource({"N, 0, north", "NE, 45, northeast", "E, 90, east", "SE, 135, southeast"})
  void facing_isACompass(Facing facing, double degrees, String spoken) {
    assertThat(facing.degrees()).isEqualTo(degrees);
    Facing across = Facing.values()[facing.ordinal() + 4];
    assertThat(across.degrees()).isEqualTo(degrees + 180);
    assertThat(facing.spoken()).isEqualTo(spoken);
    assertThat(facing.side()).isEqualTo(spoken + " side");
  }

  /** A spot 40 in along the eave and 25 in up a slope whose run is four fifths of it: 20 level. */
  @ParameterizedTest
  @CsvSource({"S, 140, 70", "N, 60, 30", "E, 80, 90", "W, 120, 10"})
  void aSpot_liesWhereABirdSeesIt(Facing facing, double east, double north) {
    OnTheGround plane = new OnTheGround(Optional.of(facing), Optional.of(FOOT));
    Spot seen = plane.fromAbove(new Spot(40, 25), 0.8);
    assertThat(seen.x()).isCloseTo(east, CLOSE);
    assertThat(seen.y()).isCloseTo(north, CLOSE);
  }

  @Test
  void bothMustBeTold() {
    Optional<Facing> south = Optional.of(Facing.S);
    Optional<Spot> foot = Optional.of(FOOT);
    assertThat(new OnTheGround(south, foot).isKnown()).isTrue();
    assertThat(new OnTheGround(south, Optional.empty()).isKnown()).isFalse();
    assertThat(new OnTheGround(Optional.empty(), foot).isKnown()).isFalse();
  }
}

package sheathwright.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pitch;

import org.junit.jupiter.api.Test;
import sheathwright.figure.Choice;
import sheathwright.figure.Labels;
import sheathwright.figure.Reading;
import sheathwright.figure.Solution;

/** Planes by hand, and what each would be solved again for. */
class PlaneTest {

  @Test
  void aTriangle_isTheEndOfAHip() {
    Plane end = Plane.triangle("east", ft(24), ft(12));
    assertThat(end.area().value()).isCloseTo(144, within(1e-9));
    assertThat(end.measures().hip().value()).isCloseTo(2 * Math.hypot(12, 12), within(1e-9));
    assertThat(end.outline(Reading.aside()).edges()).hasSize(3);
  }

  /** The trapezoid 40 and 16 wide, 12 high: 336 sq ft, two sides of √288 ft. */
  @Test
  void anyOutline_isMeasuredByItsSides() {
    Plane typed = Plane.outline("south", " 0 0, 40 0; 28 12 ,12 12 ");
    assertThat(typed.measures().area().value()).isCloseTo(336, within(1e-9));
    assertThat(typed.measures().ridge().value()).isCloseTo(16, within(1e-9));
    assertThat(typed.measures().hip().value()).isCloseTo(2 * Math.sqrt(288), within(1e-6));
    assertThat(typed.measures().valley().value()).isZero();
    assertThat(typed.measures().rake().value()).isZero();
    Plane inACell = Plane.outline("south", Choice.literal("0 0, 8 0, 8 6, -8 6"));
    assertThat(inACell.measures().rake().value()).isCloseTo(6, within(1e-9));
    assertThat(inACell.measures().valley().value()).isCloseTo(10, within(1e-9));
    assertThat(inACell.measures().hip().value()).isZero();
    Plane pointed = Plane.outline("south", "0 0, 8 0, 4 3");
    assertThat(pointed.measures().ridge().value()).isZero();
    assertThat(pointed.measures().hip().value()).isCloseTo(10, within(1e-9));
  }

  @Test
  void aMistypedCorner_isShown() {
    assertThatThrownBy(() -> Plane.outline("west", "0 0, 10 0, 10 5 5"))
        .hasMessageStartingWith("\"10 5 5\" is not a corner");
  }

  @Test
  void openings_areKept_inInches() {
    Plane two =
        Plane.rectangle("south", ft(32), ft(12))
            .without(ft(10), ft(5), ft(4), ft(2))
            .without(in(6), in(12), in(24), in(36));
    assertThat(two.openings(Reading.aside()))
        .containsExactly(Box.at(120, 60, 48, 24), Box.at(6, 12, 24, 36));
    assertThat(two.area().value()).isEqualTo(384 - 8 - 6);
    assertThat(two.measures().area().value()).isEqualTo(384);
  }

  @Test
  void aPlane_saysWhatItIs() {
    Plane plane = Plane.rectangle("south", ft(32), ft(12));
    assertThat(plane).hasToString("plane south, 384 sq ft");
    Plane once = plane.without(ft(10), ft(5), ft(4), ft(2));
    assertThat(once).hasToString("plane south, 376 sq ft, 1 opening");
    assertThat(once.without(ft(20), ft(5), ft(4), ft(2)))
        .hasToString("plane south, 368 sq ft, 2 openings");
  }

  @Test
  void whatIsSolved_hasThePlanesName() {
    Plane west = Plane.outline("west", "0 0, 9 0, 9 9");
    assertThat(Solution.behind(west.area()).orElseThrow().name()).isEqualTo("west_outline");
    Reading reading = new Reading();
    west.outline(reading);
    assertThat(reading.values().get(0).name()).isEqualTo("west_corners_ft");
  }

  @Test
  void eachInput_isNamed() {
    Plane rectangle = Plane.rectangle("south", ft(32), ft(12));
    assertThat(Labels.of(rectangle::outline))
        .containsExactly("eave of south", "slope length of south");
    Plane leaning = Plane.trapezoid("east", ft(32), ft(12), ft(0), ft(3));
    assertThat(Labels.of(leaning::outline))
        .containsExactly(
            "eave of east", "slope length of east", "left lean of east", "right lean of east");
    assertThat(Labels.of(Plane.outline("west", "0 0, 9 0, 9 9")::outline))
        .containsExactly("corners of west");
    assertThat(Labels.of(Plane.outlineOfPlan("west", "0 0, 9 0, 9 9", pitch(4))::outline))
        .containsExactly("rise of west", "corners of west");
    Plane open = rectangle.without(ft(1), ft(2), ft(3), ft(4)).without(ft(9), ft(2), ft(3), ft(4));
    assertThat(Labels.of(open::openings))
        .containsExactly(
            "eave of south",
            "slope length of south",
            "opening 1 of south, along the eave",
            "opening 1 of south, up the slope",
            "opening 1 of south, width",
            "opening 1 of south, height",
            "opening 2 of south, along the eave",
            "opening 2 of south, up the slope",
            "opening 2 of south, width",
            "opening 2 of south, height");
    assertThat(Labels.of(rectangle.restingOn("lines", Choice.literal("seven").as("n"))::outline))
        .containsExactly("eave of south", "slope length of south", "lines");
  }
}

package sheathwright.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Labels;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;

class SupportsTest {

  private static Centers centers(Supports supports) {
    return supports.centers(Reading.aside());
  }

  /** By hand: 16 in apart, one of them 19 in from the edge, so at 3, 19, 35 and 51. */
  @Test
  void regularSupports_goOnToBothSides() {
    Centers sixteen = centers(Supports.every(in(16), in(19)));
    assertThat(sixteen.between(0, 51)).containsExactly(3.0, 19.0, 35.0, 51.0);
    assertThat(sixteen.between(3, 50.99)).containsExactly(3.0, 19.0, 35.0);
    assertThat(sixteen.between(3.01, 18.99)).isEmpty();
    assertThat(centers(Supports.every(in(16), in(3))).between(4, 40)).containsExactly(19.0, 35.0);
    assertThat(sixteen.nearest(0)).isEqualTo(3);
    assertThat(sixteen.nearest(19)).isEqualTo(19);
    assertThat(sixteen.nearest(44)).isEqualTo(51);
    assertThat(sixteen.nearest(42)).isEqualTo(35);
  }

  @Test
  void withoutMore_theFirstStandsOnTheEdge() {
    assertThat(centers(Supports.every(in(24))).between(0, 50)).containsExactly(0.0, 24.0, 48.0);
  }

  @Test
  void measuredSupports_countWithBothEnds() {
    Centers measured = centers(Supports.at(ft(2), in(0), in(48)));
    assertThat(measured.between(0, 24)).containsExactly(0.0, 24.0);
    assertThat(measured.between(0.5, 48)).containsExactly(24.0, 48.0);
  }

  @Test
  void spacings_mayBeFrom6To60Inches() {
    assertThat(centers(Supports.every(in(6))).between(0, 6)).containsExactly(0.0, 6.0);
    assertThat(centers(Supports.every(ft(5))).between(0, 60)).containsExactly(0.0, 60.0);
    Figure<Length> wide = in(60.5);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Supports.every(wide))
        .withMessageStartingWith("supports are 60-1/2 in apart; they must be from 6 to 60 in")
        .satisfies(refused -> assertThat(refused.causes()).isEqualTo(List.of(wide)));
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Supports.every(in(5.5)))
        .withMessageStartingWith("supports are 5-1/2 in apart");
  }

  @Test
  void measuredOnes_mayBe1To60InchesApart() {
    Supports ends = Supports.at(in(61), in(1), in(0));
    assertThat(centers(ends).between(0, 61)).containsExactly(0.0, 1.0, 61.0);
    assertThat(ends).hasToString("3 measured supports");
  }

  @Test
  void whatIsRefused_isNamedWithItsFigures() {
    Figure<Length> far = in(90);
    Figure<Length> near = in(24);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Supports.at(far, in(0), near))
        .withMessageStartingWith("no support is measured between 24")
        .withMessageContaining(" and 90")
        .satisfies(refused -> assertThat(refused.causes()).isEqualTo(List.of(far, near)));
    Figure<Length> doubled = in(24.5);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Supports.at(in(0), doubled, near))
        .withMessageStartingWith("two supports are measured at 24")
        .withMessageContaining(" and 24.5")
        .satisfies(refused -> assertThat(refused.causes()).isEqualTo(List.of(doubled, near)));
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Supports.at(near))
        .satisfies(refused -> assertThat(refused.causes()).isEqualTo(List.of(near)));
  }

  @Test
  void theyTellWhatTheyRestOn() {
    Figure<Length> spacing = in(16);
    Figure<Length> first = in(3);
    Supports regular = Supports.every(spacing, first);
    assertThat(regular.given()).containsEntry("spacing", spacing).containsEntry("first", first);
    assertThat(regular.given().keySet()).containsExactly("spacing", "first");
    assertThat(regular).hasToString("supports every 16 in");
    assertThat(Labels.of(regular::centers))
        .containsExactly("spacing of the supports", "first support");
    Supports measured = Supports.at(first, spacing);
    assertThat(measured.given()).containsEntry("1", first).containsEntry("2", spacing);
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> measured.given().remove("1"));
    assertThat(Labels.of(measured::centers)).containsExactly("support 1", "support 2");
  }

  @Test
  void aSpacingByItself_isHeldToItsRange() {
    assertThat(SupportSpacing.within(ft(2)).value()).isEqualTo(24);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> SupportSpacing.within(in(97)).value())
        .withMessageContaining("16, 19.2 and 24 are usual");
  }
}

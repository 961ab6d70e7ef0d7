package sheathwright.sheathing.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import sheathwright.figure.Reading;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;

/** Layouts that were worked by hand; the file says by which rules. */
class HandLayoutsTest {

  /** The planes of one case, laid. */
  static List<CourseLayout> laid(ArgumentsAccessor line) {
    Supports supports = Supports.every(in(line.getDouble(4)), in(line.getDouble(5)));
    LayoutRules rules =
        LayoutRules.USUAL.origin(ft(line.getDouble(6))).stagger(in(line.getDouble(7)));
    List<CourseLayout> planes = new ArrayList<>();
    for (int plane = 0; plane < line.getInteger(1); plane++) {
      Plane shape = Plane.outline("plane_" + plane, line.getString(2));
      if (line.getString(3) != null) {
        String[] opening = line.getString(3).split(" ");
        shape =
            shape.without(
                ft(Double.parseDouble(opening[0])),
                ft(Double.parseDouble(opening[1])),
                ft(Double.parseDouble(opening[2])),
                ft(Double.parseDouble(opening[3])));
      }
      planes.add(CourseLayout.of(shape, supports, rules));
    }
    return planes;
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = "/sheathwright/sheathing/layout/hand-layouts.csv",
      delimiter = ';',
      numLinesToSkip = 4)
  void layout_isAsWorkedByHand(ArgumentsAccessor line) {
    List<CourseLayout> planes = laid(line);
    assertThat(sum(planes, plane -> plane.plane().area().value()))
        .isCloseTo(line.getDouble(8), within(1e-6));
    assertThat(sum(planes, plane -> laid(plane).sheets().size())).isEqualTo(line.getDouble(9));
    assertThat(sum(planes, plane -> laid(plane).sheets().size() - laid(plane).cut().size()))
        .isEqualTo(line.getDouble(10));
    assertThat(sum(planes, plane -> laid(plane).jointLength(false) / 12))
        .isCloseTo(line.getDouble(13), within(0.002));
    assertThat(sum(planes, plane -> laid(plane).jointLength(true) / 12))
        .isCloseTo(line.getDouble(14), within(0.002));
    assertThat(sum(planes, plane -> laid(plane).lineLength() / 12))
        .isCloseTo(line.getDouble(15), within(0.002));
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = "/sheathwright/sheathing/layout/hand-layouts.csv",
      delimiter = ';',
      numLinesToSkip = 4)
  void sheets_areAsFewAsByHand_whenCutPiecesAreShared(ArgumentsAccessor line) {
    DeckLayout layout = Layouts.together(laid(line));
    assertThat(layout.sheets().value()).isEqualTo(line.getDouble(12));
    assertThat(layout.atLeast().value()).isEqualTo(line.getDouble(12));
    boolean isNested = line.getDouble(12) < line.getDouble(11);
    assertThat(layout.cutList().pieces())
        .filteredOn(each -> each.piece().label().contains(" with "))
        .hasSize(isNested ? 1 : 0);
  }

  private static CourseLayout.Laid laid(CourseLayout plane) {
    return plane.laid(Reading.aside());
  }

  private static double sum(List<CourseLayout> planes, ToDoubleFunction<CourseLayout> of) {
    return planes.stream().mapToDouble(of).sum();
  }
}

package sheathwright.repl.show;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.pitch;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.job.StringTable;
import sheathwright.leveling.plan.Straightening;
import sheathwright.loads.wind.RoofShape;
import sheathwright.loads.wind.ZoneMap;
import sheathwright.published.LoadEdition;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.wood.LumberSize;

/** A picture takes the width that it is given, and no more. */
class PicturesFitTest {

  private static final Plane LONG = Plane.rectangle("south", ft(90), ft(17));
  private static final Supports RAFTERS = Supports.every(in(24));

  private static Stream<Object> pictured() {
    Mark mark = Mark.of("a", Choice.literal(Finding.ROT), in(300), in(8), in(16), in(8));
    return Stream.of(
        Layouts.layout(LONG, RAFTERS),
        Layouts.patches(LONG, RAFTERS, mark),
        ZoneMap.of(
            LONG,
            pitch(6),
            Choice.literal(RoofShape.GABLE),
            Choice.literal(LoadEdition.ASCE7_16),
            in(36)),
        Straightening.straighten(
            StringTable.read(Path.of("demo-data", "tallow-end", "readings.csv"), "S"),
            LumberSize.SIZE_2X6,
            LumberSize.SIZE_2X6,
            number(0.86)));
  }

  @ParameterizedTest
  @ValueSource(ints = {80, 120})
  void everyPicture_takesTheWidth(int columns) {
    assertThat(pictured())
        .allSatisfy(
            result -> {
              List<Integer> widths = Bars.of(result, columns).lines().map(String::length).toList();
              assertThat(widths).allMatch(width -> width <= columns);
              assertThat(widths).anyMatch(width -> width >= columns - 1);
            });
  }

  @ParameterizedTest
  @ValueSource(ints = {80, 120})
  void bars_takeTheWidth(int columns) {
    Check check = Check.of("bending under dead and roof live load", "bending", in(3), in(2));
    assertThat(Bars.of(check, columns).lines().findFirst())
        .hasValueSatisfying(line -> assertThat(line).hasSize(columns).endsWith("1.5 NOT ok"));
    assertThat(Bars.of(List.of(in(1), in(2)), columns).lines())
        .allMatch(line -> line.length() <= columns);
  }
}

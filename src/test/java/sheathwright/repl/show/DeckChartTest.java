package sheathwright.repl.show;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pitch;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Choice;
import sheathwright.loads.wind.RoofShape;
import sheathwright.loads.wind.ZoneMap;
import sheathwright.published.LoadEdition;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;

/** Small planes whose picture can be drawn by hand: a cell is 4 in wide and 8 in high. */
class DeckChartTest {

  /** The left sheet ends half a gap before 48 in, and so in the twelfth cell. */
  @Test
  void aLayout_showsSheetEndsCoursesAndSupports() {
    Plane plane = Plane.rectangle("shed", ft(16), ft(8));
    assertThat(Bars.of(Layouts.layout(plane, Supports.every(in(24))), 80).lines().skip(1).limit(13))
        .containsExactly(
            "...........|.......................|............",
            "...........|.......................|............",
            "...........|.......................|............",
            "...........|.......................|............",
            "...........|.......................|............",
            "...........|.......................|............",
            "_______________________|________________________",
            ".......................|........................",
            ".......................|........................",
            ".......................|........................",
            ".......................|........................",
            ".......................|........................",
            "^     ^     ^     ^     ^     ^     ^     ^    ^");
  }

  @Test
  void patches_showWhatWasFoundAndWhatIsCutOut() {
    Plane plane = Plane.rectangle("shed", ft(16), ft(4));
    Mark mark = Mark.of("a", Choice.literal(Finding.ROT), in(52), in(8), in(16), in(8));
    String picture = Bars.of(Layouts.patches(plane, Supports.every(in(24)), mark), 80);
    assertThat(picture).contains("/RRRR//////|").contains("R rot").contains("/ cut out");
  }

  @Test
  void windZones_haveTheNumbersOfTheirLabels() {
    ZoneMap zones =
        ZoneMap.of(
            Plane.rectangle("shed", ft(16), ft(8)),
            pitch(6),
            Choice.literal(RoofShape.GABLE),
            Choice.literal(LoadEdition.ASCE7_10),
            in(24));
    List<String> rows = Bars.of(zones, 120).lines().skip(1).limit(12).toList();
    assertThat(rows.get(0)).isEqualTo("333333" + "2".repeat(36) + "333333");
    assertThat(rows.get(6)).isEqualTo("222222" + "1".repeat(36) + "222222");
  }
}

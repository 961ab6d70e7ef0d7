package sheathwright.life.supply;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.life.Item;
import sheathwright.job.life.LifeText;
import sheathwright.job.table.JobText;

/** The orders of the demo jobs, each line by hand. */
class SupplyTest {

  private static Supply supply(JobText job) {
    return new Supply(new Estimate(job.job()), Map.of());
  }

  private static Supply demo(String name) {
    return supply(JobText.demo(name));
  }

  /** What to buy, packs and what a pack is, needed, overage; a line without a name is empty. */
  private static List<String> lines(Roll roll) {
    return roll.rows().stream()
        .filter(row -> !row.get(0).plain().equals(Supply.NOT_NEEDED))
        .map(row -> row.stream().map(Traced::plain).collect(Collectors.joining(" | ")))
        .toList();
  }

  /** 3 sheets and 5 % of them, 63 nails in each as near edges (7 × 9): 189 and 9.45. */
  @Test
  void theGable_buysSheetsAndNailsByTheirNames() {
    assertThat(lines(demo("quince-hollow").order()))
        .containsExactly(
            "15/32 in plywood 4x8, span rating 32/16 | sheet | 4 | 3 | 1",
            "8d common 0.131 x 2-1/2 in, smooth shank | box of 2500 | 1 | 189 | 10");
    assertThat(demo("quince-hollow").waiting()).isEmpty();
  }

  /** A tenth to spare: 2 sheets and 0.2, 86 nails and 8.6 of 1,000 a box; the panel is not said. */
  @Test
  void whatTheJobDoesNotSay_isNotMadeUp() {
    assertThat(lines(supply(JobText.small()).order()))
        .containsExactly(
            "panel 4x8, span rating not said | sheet | 3 | 2 | 1",
            "deck nails, not said which | box of 1000 | 1 | 86 | 9");
  }

  /** 28 sheets and 1.4, 28 × 33 nails and 46.2; 18 sisters of 14 ft with 26 nails each wait. */
  @Test
  void underAStop_theLumberOfTheRaftersWaits() {
    Supply cottage = demo("mistwater-cottage");
    assertThat(lines(cottage.order()).stream().map(line -> line.split(" \\| ")[3]))
        .containsExactly("28", "924");
    assertThat(lines(cottage.waiting().orElseThrow()))
        .containsExactly(
            "2x8 14 ft | stick | 18 | 18 | 0",
            "10d box 0.128 x 3 in | box of 2500 | 1 | 468 | 24",
            "Shims for a rafter | piece | 7 | 7 | 0");
  }

  /**
   * 3 scabs of 48 in, two to a stick, and 58.6 ft of blocks at 8 ft a stick: 8.8 of them; 10 nails
   * a scab and 2 a foot: 147.2. 6 refastened sheets with 19 nails and 2 lifted ones with 63 as near
   * edges: 240 more.
   */
  @Test
  void whatTheMarksLeadTo_isBought() {
    JobText job =
        JobText.demo("quince-hollow").withLines("rates", "refasten_nails,19,", "refasten_h,0.12,");
    Supply supply =
        new Supply(
            new Estimate(job.job()),
            Map.of(
                Item.SCAB, Figure.of(3, Units.PIECE),
                Item.BLOCK, Figure.of(58.6, Units.FOOT),
                Item.REFASTEN, Figure.of(6, Units.PIECE),
                Item.LIFT, Figure.of(2, Units.PIECE),
                Item.CLIP, Figure.of(5, Units.PIECE),
                Item.COVER, Figure.of(1, Units.PIECE)));
    assertThat(lines(supply.order()).subList(1, 6))
        .containsExactly(
            "8d common 0.131 x 2-1/2 in, smooth shank | box of 2500 | 1 | 437 | 22",
            "Panel clips | piece | 6 | 5 | 1",
            "2x4 8 ft, for scabs and blocks | stick | 9 | 9 | 0",
            "sister nails, not said which | box of 2500 | 1 | 148 | 8",
            "Sheet metal for holes | piece | 1 | 1 | 0");
  }

  /** The cut list's sticks, each length its own line, and no overage on what is cut to length. */
  @Test
  void sisters_areBoughtByTheCutList() {
    Estimate tallow = new Estimate(JobText.demo("tallow-end").job());
    List<String> cut =
        tallow
            .rafterLeveling()
            .orElseThrow()
            .survey()
            .orElseThrow()
            .cutting()
            .orElseThrow()
            .roll()
            .cellsOf("stick_ft")
            .stream()
            .map(Traced::plain)
            .toList();
    List<String> order =
        lines(new Supply(tallow, Map.of()).order()).stream()
            .filter(line -> line.startsWith("2x6 "))
            .toList();
    assertThat(order)
        .containsExactlyElementsOf(
            cut.stream()
                .distinct()
                .map(
                    feet -> {
                      long count = cut.stream().filter(feet::equals).count();
                      return "2x6 %s ft | stick | %d | %d | 0".formatted(feet, count, count);
                    })
                .toList());
    assertThat(order).isNotEmpty();
  }

  /** Once the covering is off, no more sheets are bought than the patches are cut from: 7. */
  @Test
  void anOpenedDeck_buysForItsPatches() {
    JobText brook = JobText.demo("cinder-brook");
    assertThat(supply(brook).sheets().toBuy().value()).isEqualTo(12);
    JobText opened =
        brook.withLines("job", "stage,opened,", "agreed_on,2027-12-06,", "opened_on,2027-12-10,");
    for (String table : List.of("sent", "agreed", "stages")) {
      opened = opened.withTable(table, LifeText.opened().tables().get(table));
    }
    assertThat(supply(opened).sheets().patched().value()).isEqualTo(7);
    assertThat(supply(opened).sheets().toBuy().value()).isEqualTo(7);
  }
}

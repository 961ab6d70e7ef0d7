package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheathwright.job.life.Item;

/** The order in which marks are counted against what is in the price. */
class MarkOrderTest {

  @Test
  void marks_countByTheDayThenAsPeopleCountThem() {
    Tables tables =
        new Tables()
            .mark("R-10", "A-1-1", Item.SHEET, 1)
            .mark("12", "A-1-2", Item.SHEET, 1)
            .mark("R-2", "A-1-3", Item.SHEET, 1)
            .mark("R-1", "A-1-4", Item.SHEET, 1, "2027-06-02")
            .mark("undated", "A-1-5", Item.SHEET, 1, "")
            .mark("9", "A-1-6", Item.SHEET, 1)
            .mark("", "A-3-10", Item.SHEET, 1)
            .mark("", "A-3-5", Item.SHEET, 1);

    assertThat(MarkOrder.of(Item.SHEET, tables.marks, tables.orders()))
        .extracting(MarkOrder::mark)
        .containsExactly("9", "12", "A-3-5", "A-3-10", "R-2", "R-10", "R-1", "undated");
  }
}

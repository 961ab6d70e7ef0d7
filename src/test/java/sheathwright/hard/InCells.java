package sheathwright.hard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Spoils what cells hand to a function: numbers, texts, truths, errors, blanks and ranges. */
record InCells(Random random) {

  /** What an office program may hand over beside a text; each is made anew. */
  private static final List<Object> OTHERS =
      Arrays.asList(
          null,
          0.0,
          -0.0,
          -1.0,
          1e308,
          Double.MIN_VALUE,
          Double.NaN,
          Double.NEGATIVE_INFINITY,
          Boolean.TRUE,
          17,
          Long.MAX_VALUE,
          'x',
          new Object[] {1.0, "x"},
          new Object[][] {{1.0, 2.0}, {null, "x"}},
          new Object[0][0],
          new double[] {1, 2},
          "#REF!",
          "waste_pct=",
          "=",
          "edge_spacing_in=edge_spacing_in=6");

  /** Rows as they come from cells, up to four of their cells spoiled; headings first. */
  Object[][] spoiled(Object[][] rows) {
    Object[][] spoiled = Arrays.stream(rows).map(InCells::asCells).toArray(Object[][]::new);
    for (int times = 1 + random.nextInt(4); times > 0; times--) {
      int at = random.nextInt(8) == 0 ? random.nextInt(rows.length) : rows.length - 1;
      Object[] row = spoiled[at];
      switch (random.nextInt(8)) {
        case 0 -> spoiled[at] = Arrays.copyOf(row, random.nextInt(2 * row.length + 1));
        case 1, 2, 3 -> set(row, new TextFaults(random).nasty());
        default -> set(row, OTHERS.get(random.nextInt(OTHERS.size())));
      }
    }
    return spoiled;
  }

  private void set(Object[] row, Object cell) {
    if (row.length > 0) {
      row[random.nextInt(row.length)] = cell;
    }
  }

  private static Object[] asCells(Object... row) {
    return Arrays.stream(row)
        .map(
            cell -> {
              String text = String.valueOf(cell);
              return text.matches("-?\\d+(\\.\\d+)?") ? (Object) Double.valueOf(text) : text;
            })
        .toArray();
  }

  /**
   * Each answer is a number or words; a refusal names what it is about, and no inner part of ours.
   */
  static void held(Object... answers) {
    for (Object answer : answers) {
      assertThat(answer).isInstanceOfAny(Double.class, String.class);
      assertThat(answer.toString())
          .doesNotContain("Exception", "sheathwright.", "java.lang", "[Ljava", "[[", "[D@");
      if (answer.toString().startsWith("refused: ")) {
        assertThat(answer.toString().length()).as("length of %.100s", answer).isBetween(20, 2_000);
      }
    }
  }
}

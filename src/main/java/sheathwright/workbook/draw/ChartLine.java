package sheathwright.workbook.draw;

import sheathwright.workbook.part.ChartCells;
import sheathwright.workbook.part.ChartSeries;
import sheathwright.workbook.part.Ink;

/** How a line of a chart looks: two can be told apart without their colors. */
enum ChartLine {
  /** What was, or was meant. */
  BROKEN("diamond", new Ink("", "9A2F1C", 1.75, true)),
  /** What is, or will be. */
  FULL("square", new Ink("", "3B4A3F", 1.75, false));

  private final String marker;
  private final Ink ink;

  ChartLine(String marker, Ink ink) {
    this.marker = marker;
    this.ink = ink;
  }

  /** A line of this look. */
  ChartSeries of(String title, ChartCells below, ChartCells heights) {
    return new ChartSeries(title, below, heights, ink, marker);
  }
}

package sheathwright.workbook.told;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import sheathwright.figure.Roll;
import sheathwright.figure.Unit;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;

/**
 * Sheets of paper under one name, a tab each. What does not fit on one at seven tenths of its size
 * goes on on the next, under the same title.
 */
public final class Sheaf {

  /** Of a sheet of paper upright, less its margins, in points. */
  private static final double PAPER = (11 - 0.6 - 0.7) * 72;

  /** No page is shrunk to less, and programs differ a little in how tall they print a line. */
  private static final double SMALLEST = 0.7;

  private static final double SAFE = 0.97;

  private static final double HEADING = 35;
  private static final double COLUMN_HEAD = 30;
  private static final double TOTAL = 18;

  private final String name;
  private final Function<String, Tab> page;
  private Tab tab;
  private int sheets;

  /**
   * The first of them.
   *
   * @param page makes a tab of a name, with its title on it
   */
  public static Sheaf of(String name, Function<String, Tab> page) {
    return new Sheaf(name, page);
  }

  private Sheaf(String name, Function<String, Tab> page) {
    this.name = name;
    this.page = page;
    turn();
  }

  /** The sheet that is written on. */
  public Tab tab() {
    return tab;
  }

  /** Goes on on a further sheet. */
  public void turn() {
    sheets++;
    tab = page.apply(sheets == 1 ? name : "%s (%s)".formatted(name, sheets)).onOnePage();
  }

  /** Goes on on a further sheet, unless so many points fit on this one. */
  public void keep(double points) {
    if (!tab.isEmpty() && left() < points) {
      turn();
    }
  }

  /** How much of the sheet is left, in points. */
  public double left() {
    double used = 0;
    for (int line = 0; line < tab.next(); line++) {
      used += tab.height(line);
    }
    return PAPER / SMALLEST * SAFE - used;
  }

  /** Whether a heading with so many points below it fits on this sheet. */
  boolean hasRoom(double points) {
    return left() >= HEADING + points;
  }

  /** A heading with at least so many points below it on the same sheet. */
  public void heading(String words, double points) {
    keep(HEADING + points);
    tab.heading(words);
  }

  /** A heading with a line below it on the same sheet. */
  public void heading(String words) {
    heading(words, TOTAL);
  }

  /** Running text across the page, kept in one piece. */
  public void paragraph(String words) {
    keep(tab.tallOf(words));
    tab.paragraph(words);
  }

  /**
   * A list under a heading; where it goes on on a further sheet, heading and headings stand there
   * again.
   *
   * @param foot what stands below it is kept on its last sheet, in points
   * @param part makes the list of some of the items; of which part, counted from 1
   * @return the parts, each as it stands
   */
  public <T> List<Listing> list(
      String heading,
      List<T> items,
      BiFunction<List<T>, Integer, Roll> part,
      List<String> headings,
      List<Unit<?>> units,
      double foot) {
    List<Listing> all = new ArrayList<>();
    Roll whole = part.apply(items, 0);
    int first = 0;
    while (first < items.size()) {
      keep(HEADING + COLUMN_HEAD + foot + tab.tallOf(whole.rows().get(first)));
      double room = left() - HEADING - COLUMN_HEAD - foot;
      int last = first;
      while (last < items.size() && room >= tab.tallOf(whole.rows().get(last))) {
        room -= tab.tallOf(whole.rows().get(last++));
      }
      last = Math.max(last, first + 1);
      tab.heading(all.isEmpty() ? heading : heading + ", going on");
      all.add(tab.list(part.apply(items.subList(first, last), all.size() + 1), headings, units));
      first = last;
      if (first < items.size()) {
        turn();
      }
    }
    return all;
  }

  /** The same, with a total below it or nothing. */
  public <T> List<Listing> list(
      String heading,
      List<T> items,
      BiFunction<List<T>, Integer, Roll> part,
      List<String> headings,
      List<Unit<?>> units) {
    return list(heading, items, part, headings, units, TOTAL);
  }

  /** What a list is called, or a further part of it, counted from 1. */
  public static String named(String list, int part) {
    return part < 2 ? list : list + "_" + part;
  }
}

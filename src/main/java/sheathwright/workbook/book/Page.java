package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import sheathwright.workbook.file.Program;
import sheathwright.workbook.part.Printing;
import sheathwright.workbook.part.Sheet;

/**
 * Makes a tab something to hand over: locked, frozen below its title, and set up so that each page
 * prints.
 */
public final class Page {

  private static final double POINTS_UPRIGHT = 690;
  private static final double POINTS_ACROSS = 500;

  private static final double WIDE_UPRIGHT = 540;
  private static final double WIDE_ACROSS = 720;
  private static final double POINTS_A_DOT = 0.75;

  /** Between what is printed and the edges of the paper, in inches. */
  private static final double SIDE = 0.5;

  private static final double TOP_EDGE = 0.6;
  private static final double FOOT = 0.7;

  /** So much of a page is surely filled before another program begins the next. */
  private static final double SURELY = 0.98;

  /** Title, heading and column heads of a list that fills a page, in points. */
  private static final double TOP = 120;

  /** Programs take a column up to a tenth wider than its dots; what runs over is a page more. */
  private static final double SURELY_WIDE = 0.9;

  /** So many lines at least stand on the page of their heading. */
  private static final int LINES_WITH_A_HEADING = 2;

  /** Smaller than this no page is printed to save another one. */
  private static final double SMALLEST = 0.7;

  /** Stands under each page, and once in a cell: what is in a footer only is not read aloud. */
  static final String SAID =
      Program.NAME + ". Planning help: local code and licensed practice decide.";

  /** Before words of a footer: letters of eight points. */
  private static final String SMALL = "&8";

  private Page() {}

  /** Begins a new page where what comes next would not fit on this one. */
  public static void keepTogether(Tab tab, double points) {
    if (tab.isOnOnePage()) {
      return;
    }
    List<Integer> breaks = tab.sheet().breaks();
    int first = breaks.isEmpty() ? Tab.FIRST_LINE : breaks.get(breaks.size() - 1) + 1;
    double used = 0;
    for (int line = first; line < tab.next(); line++) {
      used += tab.height(line);
    }
    if (used + points > POINTS_UPRIGHT && tab.next() > first) {
      startNew(tab);
    }
  }

  /** Whether a list of a tab is so tall that it takes more than a page under its headings. */
  static boolean isLongerThanOne(Tab tab, double points) {
    return points > (roomOn(tab, isUpright(tab)) - TOP);
  }

  private static boolean isUpright(Tab tab) {
    return tab.isOnOnePage() || wide(tab) * SMALLEST <= SURELY_WIDE * WIDE_UPRIGHT;
  }

  /** Begins a new page. */
  public static void startNew(Tab tab) {
    tab.sheet().breakBelow(tab.next() - 1);
  }

  /**
   * As few pages as a tab goes on without being shrunk too far; any number, which is written as 0,
   * where it is told where pages begin and more than one is needed.
   */
  private static int pages(Tab tab, boolean isUpright) {
    double used = 0;
    for (int line = 0; line < tab.next(); line++) {
      used += tab.height(line);
    }
    int pages = (int) Math.ceil(used * SMALLEST / (isUpright ? POINTS_UPRIGHT : POINTS_ACROSS));
    if (pages > 1 && holdsLists(tab)) {
      breakBetweenLists(tab, isUpright);
      return 0;
    }
    if (pages > 1 && !tab.sheet().breaks().isEmpty()) {
      return 0;
    }
    tab.sheet().removeBreaks();
    return pages;
  }

  /** Whether pages are to begin where lists do: one list has its headings on each page instead. */
  private static boolean holdsLists(Tab tab) {
    return tab.audience().isOffice() && tab.repeats() && !tab.isKeptBack() && !tab.hasOneList();
  }

  /**
   * Says where each page begins, at the largest size of letters that takes no more pages than the
   * smallest would. A program that is told both where pages begin and that all is to fit forgets
   * one of the two, so the size is said outright.
   */
  private static void breakBetweenLists(Tab tab, boolean isUpright) {
    double paper = across(tab, isUpright) * (isUpright ? WIDE_UPRIGHT : WIDE_ACROSS);
    int widest = (int) Math.floor(100 * Math.min(1, SURELY_WIDE * paper / wide(tab)));
    int smallest = (int) Math.ceil(100 * SMALLEST);
    int fewest = broken(tab, room(isUpright, Math.min(smallest, widest))).size();
    int percent = widest;
    while (percent > smallest && broken(tab, room(isUpright, percent)).size() > fewest) {
      percent--;
    }
    broken(tab, room(isUpright, percent)).forEach(tab.sheet()::breakBelow);
    tab.sheet().printing().at(percent);
  }

  /** How many points of its lines a page holds that is printed at so many percent. */
  private static double room(boolean isUpright, int percent) {
    return (isUpright ? POINTS_UPRIGHT : POINTS_ACROSS) * SURELY * 100 / percent;
  }

  /**
   * The last line of each page: before a list that would be cut and is not longer than a page,
   * before a heading that would stand alone at the foot of one, or where a page is full.
   */
  private static List<Integer> broken(Tab tab, double room) {
    List<Integer> last = new ArrayList<>();
    double again = 0;
    for (int line = tab.firstRepeated(); line <= tab.lastRepeated(); line++) {
      again += tab.height(line);
    }
    double used = 0;
    boolean isFresh = true;
    for (int line = 0; line < tab.next(); line++) {
      boolean isBegun = line > 0 && tab.sheet().isBrokenBelow(line - 1);
      double wanted = isFresh ? 0 : together(tab, line, room - again);
      if (isBegun || used + Math.max(wanted, tab.height(line)) > room) {
        last.add(line - 1);
        used = again;
        isFresh = true;
      }
      used += tab.height(line);
      isFresh = isFresh && (line < Tab.FIRST_LINE || tab.isBlank(line));
    }
    return last;
  }

  /** How tall a page of a tab is as its lines are counted, in points. */
  private static double roomOn(Tab tab, boolean isUpright) {
    double paper = across(tab, isUpright) * (isUpright ? WIDE_UPRIGHT : WIDE_ACROSS);
    double scale = Math.min(1, paper / wide(tab));
    return (isUpright ? POINTS_UPRIGHT : POINTS_ACROSS) * SURELY / scale;
  }

  /** How many pages side by side a tab takes whose letters are not to be shrunk too far. */
  private static int across(Tab tab, boolean isUpright) {
    double paper = isUpright ? WIDE_UPRIGHT : WIDE_ACROSS;
    return tab.isOnOnePage() ? 1 : (int) Math.ceil(wide(tab) * SMALLEST / (SURELY_WIDE * paper));
  }

  private static double wide(Tab tab) {
    double dots = 0;
    for (int column = 0; column < tab.across(); column++) {
      dots += tab.sheet().dots(column);
    }
    return dots * POINTS_A_DOT;
  }

  /** How tall what begins in a line is that is not to be cut; 0 where nothing begins. */
  private static double together(Tab tab, int first, double room) {
    boolean isSection = tab.beginsSection(first);
    boolean isHead = tab.headsColumns(first);
    boolean isUnderItsHeading = isHead && tab.beginsSection(first - 1);
    if (!isSection && !isHead || isUnderItsHeading) {
      return 0;
    }
    double tall = 0;
    double least = 0;
    int told = 0;
    boolean isList = false;
    for (int line = first; line < tab.next(); line++) {
      boolean isNext = line > first && (tab.beginsSection(line) || isList && tab.isBlank(line));
      if (isNext || !isList && told > LINES_WITH_A_HEADING) {
        break;
      }
      tall += tab.height(line);
      told += tab.isBlank(line) ? 0 : 1;
      if (tab.headsColumns(line)) {
        isList = true;
        told = 0;
      }
      if (told <= LINES_WITH_A_HEADING) {
        least = tall;
      }
    }
    return tall <= room ? tall : least;
  }

  static void finish(Tab tab) {
    Sheet sheet = tab.sheet();
    sheet.freeze(Tab.FIRST_LINE - 1);
    Printing print = sheet.printing();
    print.margins(SIDE, TOP_EDGE, FOOT);
    boolean isUpright = isUpright(tab);
    print.upright(isUpright);
    int pages = tab.isOnOnePage() ? 1 : pages(tab, isUpright);
    print.fit(across(tab, isUpright), pages);
    if (!tab.isKeptBack() && tab.repeats() && pages != 1) {
      print.repeat(tab.firstRepeated(), tab.lastRepeated());
    }
    print.footer(SMALL + SAID, SMALL + "&A, page &P of &N");
    int last = Math.max(tab.lines().size(), tab.next()) - 1;
    int right = tab.across() - 1;
    sheet.filled(last, right);
    print.area(
        tab.isKeptBack()
            ? new CellRangeAddress(last + 1, last + 1, 0, 0)
            : new CellRangeAddress(0, last, 0, right));
  }
}

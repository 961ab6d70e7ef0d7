package sheathwright.workbook.book;

import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Makes a tab something to hand over: locked, frozen below its title, and set up so that each page
 * prints.
 */
public final class Page {

  /** Characters in a line of an upright page. */
  private static final int WIDEST_UPRIGHT = 110;

  private static final double POINTS_UPRIGHT = 690;

  /** Stands under each page, and once in a cell: what is in a footer only is not read aloud. */
  static final String SAID =
      Program.NAME + ". Planning help: local code and licensed practice decide.";

  /** Before words of a footer: letters of eight points. */
  private static final String SMALL = "&8";

  private Page() {}

  /** Begins a new page where what comes next would not fit on this one. */
  public static void keepTogether(Tab tab, double points) {
    XSSFSheet sheet = tab.sheet();
    int[] breaks = sheet.getRowBreaks();
    int first = breaks.length == 0 ? Tab.FIRST_LINE : breaks[breaks.length - 1] + 1;
    double used = 0;
    for (int line = first; line < tab.next(); line++) {
      used += tab.height(line);
    }
    if (used + points > POINTS_UPRIGHT && tab.next() > first) {
      sheet.setRowBreak(tab.next() - 1);
    }
  }

  /** Begins a new page. */
  public static void startNew(Tab tab) {
    tab.sheet().setRowBreak(tab.next() - 1);
  }

  static void finish(Tab tab) {
    XSSFSheet sheet = tab.sheet();
    sheet.enableLocking();
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
    sheet.lockSelectLockedCells(false);
    sheet.createFreezePane(0, Tab.FIRST_LINE - 1);
    sheet.setDisplayGridlines(false);
    sheet.setRepeatingRows(new CellRangeAddress(tab.firstRepeated(), tab.lastRepeated(), -1, -1));
    sheet.setFitToPage(true);
    sheet.setHorizontallyCenter(true);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.LEFT, 0.5);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.RIGHT, 0.5);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.TOP, 0.6);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.BOTTOM, 0.7);
    PrintSetup print = sheet.getPrintSetup();
    print.setFitWidth((short) 1);
    print.setFitHeight((short) (tab.isOnOnePage() ? 1 : 0));
    print.setPaperSize((short) (PaperSize.LETTER_PAPER.ordinal() + 1));
    print.setLandscape(!tab.isOnOnePage() && tab.characters() > WIDEST_UPRIGHT);
    sheet.getFooter().setLeft(SMALL + SAID);
    sheet.getFooter().setRight(SMALL + "&A, page &P of &N");
    int last = Math.max(tab.lines().size(), tab.next()) - 1;
    sheet.setDimensionOverride(new CellRangeAddress(0, last, 0, tab.across() - 1));
    sheet
        .getWorkbook()
        .setPrintArea(sheet.getWorkbook().getSheetIndex(sheet), 0, tab.across() - 1, 0, last);
  }
}

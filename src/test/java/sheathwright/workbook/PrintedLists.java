package sheathwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Whether the headings of a printed list stand on each of its pages, and on no page without it. */
final class PrintedLists {

  /** Lines of a tab whose one list is to have its headings on every page. */
  private static final int LONGER_THAN_A_PAGE = 60;

  /** Title and subtitle are the first two lines. */
  private static final int LAST_OF_THE_TITLE = 1;

  private PrintedLists() {}

  /** What is wrong with the lists of a tab. */
  static List<String> wrong(XSSFWorkbook workbook, XSSFSheet sheet) {
    List<String> wrong = new ArrayList<>();
    if (isKeptBack(workbook, workbook.getSheetIndex(sheet))) {
      return wrong;
    }
    Map<Integer, Integer> lists = lists(workbook, sheet);
    CellRangeAddress repeated = sheet.getRepeatingRows();
    int again = repeated == null ? -1 : repeated.getLastRow();
    lists.forEach(
        (head, last) -> {
          String name = "%s, the list below line %d".formatted(sheet.getSheetName(), head + 1);
          boolean isMost = (last - head) * 2 > sheet.getLastRowNum();
          boolean isAlone = lists.size() == 1 && sheet.getLastRowNum() > LONGER_THAN_A_PAGE;
          boolean isCut =
              IntStream.of(sheet.getRowBreaks()).anyMatch(line -> line >= head && line < last);
          if (again != head && (isCut || isAlone && isMost)) {
            wrong.add(name + " goes on over a page without its headings");
          }
          if (again == head && !isMost) {
            wrong.add(name + " has its headings over what is no part of it");
          }
        });
    if (again > LAST_OF_THE_TITLE && !lists.containsKey(again)) {
      wrong.add(sheet.getSheetName() + " repeats a line that heads no list");
    }
    return wrong;
  }

  /** A tab that is not printed with the others prints one empty cell below all that it holds. */
  static boolean isKeptBack(XSSFWorkbook workbook, int sheet) {
    AreaReference area =
        new AreaReference(workbook.getPrintArea(sheet), SpreadsheetVersion.EXCEL2007);
    return area.getFirstCell().getRow() > workbook.getSheetAt(sheet).getLastRowNum();
  }

  /** The lines above the columns of a tab's lists, each with the last line of its list. */
  private static Map<Integer, Integer> lists(XSSFWorkbook workbook, XSSFSheet sheet) {
    Map<Integer, Integer> lists = new TreeMap<>();
    for (Name name : workbook.getAllNames()) {
      if (name.getNameName().startsWith("_") || name.getRefersToFormula().contains("#REF")) {
        continue;
      }
      AreaReference area =
          new AreaReference(name.getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
      boolean isColumn =
          !area.isSingleCell()
              && area.getFirstCell().getCol() == area.getLastCell().getCol()
              && area.getFirstCell().getSheetName().equals(sheet.getSheetName());
      if (isColumn) {
        lists.merge(area.getFirstCell().getRow() - 1, area.getLastCell().getRow(), Math::max);
      }
    }
    return lists;
  }
}

package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The kinds of mistakes that people make in a spreadsheet, each made in a place of its own. */
enum Mistake {
  NUMBER_OVER_FORMULA("a number typed over a formula") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      return one(cells(book, Mistake::isNumberFormula), random, cell -> typed(cell, 1.1));
    }
  },
  RANGE_ONE_SHORT("a range one line short") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      List<Name> lists = lists(book, 2);
      if (lists.isEmpty()) {
        return false;
      }
      Name name = lists.get(random.nextInt(lists.size()));
      AreaReference area = area(name);
      CellReference last = area.getLastCell();
      name.setRefersToFormula(
          new AreaReference(
                  area.getFirstCell(),
                  new CellReference(
                      last.getSheetName(), last.getRow() - 1, last.getCol(), true, true),
                  SpreadsheetVersion.EXCEL2007)
              .formatAsString());
      return true;
    }
  },
  SIGN("a sign turned round") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      return one(
          cells(book, Mistake::isNumberFormula),
          random,
          cell -> cell.setCellFormula("-(" + cell.getCellFormula() + ")"));
    }
  },
  UNIT("a unit taken for another") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      return one(
          cells(book, cell -> isNumberFormula(cell) || isLockedNumber(cell)),
          random,
          cell -> {
            if (cell.getCellType() == CellType.FORMULA) {
              cell.setCellFormula("(" + cell.getCellFormula() + ")/12");
            } else {
              cell.setCellValue(cell.getNumericCellValue() * 12 + 1);
            }
          });
    }
  },
  WRONG_ROW("the line below taken for this one") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      return one(
          cells(book, cell -> isFormula(cell) && REFERENCE.matcher(cell.getCellFormula()).find()),
          random,
          cell -> {
            Matcher reference = REFERENCE.matcher(cell.getCellFormula());
            cell.setCellFormula(
                reference.replaceFirst(
                    found -> found.group(1) + (Integer.parseInt(found.group(2)) + 1)));
          });
    }
  },
  STALE_PRICE("a price of last year") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      List<Cell> prices = new ArrayList<>();
      for (Name name : book.getAllNames()) {
        if (name.getNameName().contains("usd") && !name.getNameName().startsWith("_")) {
          AreaReference area = area(name);
          for (CellReference at : area.getAllReferencedCells()) {
            Row row = book.getSheet(at.getSheetName()).getRow(at.getRow());
            Cell cell = row == null ? null : row.getCell(at.getCol());
            if (cell != null && (isNumberFormula(cell) || isLockedNumber(cell))) {
              prices.add(cell);
            }
          }
        }
      }
      return one(prices, random, cell -> typed(cell, 0.93));
    }
  },
  DELETED_LINE("a line deleted") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      List<Name> lists = lists(book, 2);
      if (lists.isEmpty()) {
        return false;
      }
      AreaReference area = area(lists.get(random.nextInt(lists.size())));
      Sheet sheet = book.getSheet(area.getFirstCell().getSheetName());
      int row = area.getFirstCell().getRow();
      if (sheet.getRow(row) == null) {
        return false;
      }
      boolean isPulledUp = random.nextBoolean();
      sheet.removeRow(sheet.getRow(row));
      if (isPulledUp) {
        sheet.shiftRows(row + 1, sheet.getLastRowNum(), -1);
      }
      return true;
    }
  },
  DELETED_COLUMN("a column deleted") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      List<Name> lists = lists(book, 2);
      if (lists.isEmpty()) {
        return false;
      }
      CellReference first = area(lists.get(random.nextInt(lists.size()))).getFirstCell();
      Returned.withoutColumn(book, book.getSheet(first.getSheetName()), first.getCol());
      return true;
    }
  },
  MOVED_BLOCK("a block of cells cut out and put elsewhere") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      List<Name> lists = lists(book, 2);
      if (lists.isEmpty()) {
        return false;
      }
      AreaReference area = area(lists.get(random.nextInt(lists.size())));
      Sheet sheet = book.getSheet(area.getFirstCell().getSheetName());
      String block =
          new CellRangeAddress(
                  area.getFirstCell().getRow(),
                  area.getLastCell().getRow(),
                  area.getFirstCell().getCol(),
                  area.getLastCell().getCol())
              .formatAsString();
      Returned.moveBlock(book, sheet.getSheetName(), block, BESIDE, random.nextInt(2));
      return true;
    }
  },
  SORTED_LINES("two lines of a list in the other order") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      List<Name> lists = lists(book, 2);
      if (lists.isEmpty()) {
        return false;
      }
      AreaReference area = area(lists.get(random.nextInt(lists.size())));
      Sheet sheet = book.getSheet(area.getFirstCell().getSheetName());
      Row one = sheet.getRow(area.getFirstCell().getRow());
      Row two = sheet.getRow(area.getFirstCell().getRow() + 1);
      return one != null && two != null && swapped(one, two);
    }
  },
  CHECK("a check's cell typed over") {
    @Override
    boolean make(XSSFWorkbook book, Random random) {
      List<Cell> checks = new ArrayList<>();
      for (Name name : book.getAllNames()) {
        if (name.getNameName()
            .matches("check_\\d+|checks_failing|sums_tie|.*_verdict|state_of_.*")) {
          CellReference at = area(name).getFirstCell();
          checks.add(book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol()));
        }
      }
      return one(
          checks.stream().filter(Mistake::isFormula).toList(),
          random,
          cell -> {
            boolean isNumber = cell.getCachedFormulaResultType() == CellType.NUMERIC;
            double number = isNumber ? cell.getNumericCellValue() : 0;
            String text = isNumber ? "" : cell.getRichStringCellValue().getString();
            cell.setBlank();
            if (isNumber) {
              cell.setCellValue(number);
            } else {
              cell.setCellValue(text);
            }
          });
    }
  };

  /** Further across than any of our pages is wide. */
  private static final int BESIDE = 60;

  private static final Pattern REFERENCE = Pattern.compile("\\b([A-Z]{1,2})(\\d{1,4})\\b(?!\\()");

  private final String words;

  Mistake(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** Makes it somewhere; false if there is no place for it. */
  abstract boolean make(XSSFWorkbook book, Random random);

  private static boolean one(
      List<Cell> cells, Random random, java.util.function.Consumer<Cell> change) {
    if (cells.isEmpty()) {
      return false;
    }
    change.accept(cells.get(random.nextInt(cells.size())));
    return true;
  }

  private static List<Cell> cells(XSSFWorkbook book, Predicate<Cell> which) {
    List<Cell> cells = new ArrayList<>();
    for (Sheet sheet : book) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (which.test(cell)) {
            cells.add(cell);
          }
        }
      }
    }
    return cells;
  }

  private static boolean isFormula(Cell cell) {
    return cell.getCellType() == CellType.FORMULA;
  }

  private static boolean isNumberFormula(Cell cell) {
    return isFormula(cell)
        && cell.getCachedFormulaResultType() == CellType.NUMERIC
        && cell.getNumericCellValue() != 0;
  }

  private static boolean isLockedNumber(Cell cell) {
    return cell.getCellType() == CellType.NUMERIC
        && cell.getCellStyle().getLocked()
        && cell.getNumericCellValue() != 0;
  }

  /** Rounded, as somebody reads it off a page and types it. */
  private static void typed(Cell cell, double times) {
    double number = Math.rint(cell.getNumericCellValue() * times * 100) / 100;
    double before = cell.getNumericCellValue();
    cell.setBlank();
    cell.setCellValue(number == before ? number + 1 : number);
  }

  /** The names of columns of lists with so many lines at least. */
  private static List<Name> lists(XSSFWorkbook book, int lines) {
    return book.getAllNames().stream()
        .map(Name.class::cast)
        .filter(name -> !name.getNameName().startsWith("_"))
        .filter(name -> name.getRefersToFormula().contains(":"))
        .filter(
            name ->
                area(name).getLastCell().getRow() - area(name).getFirstCell().getRow() + 1 >= lines)
        .toList();
  }

  private static AreaReference area(Name name) {
    return new AreaReference(name.getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
  }

  /** Swaps what two lines hold, formulas as sorting moves them; false if they hold the same. */
  private static boolean swapped(Row one, Row two) {
    Map<Integer, String> first = held(one);
    Map<Integer, String> second = held(two);
    Map<Integer, String> moved = new java.util.TreeMap<>();
    int from = one.getRowNum() + 1;
    int to = two.getRowNum() + 1;
    first.forEach((column, text) -> moved.put(column, atLine(text, from, to)));
    if (moved.equals(second)) {
      return false;
    }
    put(one, second, to, from);
    put(two, first, from, to);
    return true;
  }

  private static String atLine(String text, int from, int to) {
    return text.startsWith("=")
        ? text.replaceAll("\\b([A-Z]{1,2})" + from + "\\b", "$1" + to)
        : text;
  }

  private static Map<Integer, String> held(Row row) {
    Map<Integer, String> held = new java.util.TreeMap<>();
    for (Cell cell : row) {
      switch (cell.getCellType()) {
        case FORMULA -> held.put(cell.getColumnIndex(), "=" + cell.getCellFormula());
        case NUMERIC -> held.put(cell.getColumnIndex(), "#" + cell.getNumericCellValue());
        case STRING -> held.put(cell.getColumnIndex(), "'" + cell.getStringCellValue());
        default -> {}
      }
    }
    return held;
  }

  private static void put(Row row, Map<Integer, String> held, int from, int to) {
    row.forEach(Cell::setBlank);
    held.forEach(
        (column, text) -> {
          Cell cell = row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
          switch (text.charAt(0)) {
            case '=' -> cell.setCellFormula(atLine(text, from, to).substring(1));
            case '#' -> cell.setCellValue(Double.parseDouble(text.substring(1)));
            default -> cell.setCellValue(text.substring(1));
          }
        });
  }
}

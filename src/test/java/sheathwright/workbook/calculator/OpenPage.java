package sheathwright.workbook.calculator;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import sheathwright.catalog.Card;

/** The page of a function as somebody finds it who opens the workbook. */
record OpenPage(Card card, XSSFSheet sheet) {

  /** What the program lets somebody type into a cell: words, or numbers from a least to a most. */
  record Held(List<String> words, double least, double most, boolean isWhole) {}

  /** The cells to be changed, one for each parameter. */
  List<Cell> inputs() {
    return below("What goes in", card.parameters().size());
  }

  /** The cells that follow, one for each result. */
  List<Cell> results() {
    return below("What comes of it", card.results().size());
  }

  private List<Cell> below(String heading, int count) {
    int line = 0;
    while (!heading.equals(label(line))) {
      line++;
    }
    List<Cell> cells = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      cells.add(sheet.getRow(line + i).getCell(1));
    }
    return cells;
  }

  private String label(int line) {
    Row row = sheet.getRow(line);
    return row == null || row.getCell(0) == null ? "" : row.getCell(0).getStringCellValue();
  }

  /** What holds a cell; the program lets anything be typed if there is nothing. */
  Held held(Cell input) {
    DataValidation validation =
        sheet.getDataValidations().stream()
            .filter(each -> covers(each, input))
            .findFirst()
            .orElseThrow(() -> new AssertionError(sheet.getSheetName() + " " + input.getAddress()));
    DataValidationConstraint held = validation.getValidationConstraint();
    return switch (held.getValidationType()) {
      case DataValidationConstraint.ValidationType.LIST -> new Held(words(held), 0, 0, false);
      case DataValidationConstraint.ValidationType.INTEGER -> numbers(held, true);
      default -> numbers(held, false);
    };
  }

  private static Held numbers(DataValidationConstraint held, boolean isWhole) {
    return new Held(
        List.of(),
        Double.parseDouble(held.getFormula1()),
        Double.parseDouble(held.getFormula2()),
        isWhole);
  }

  private List<String> words(DataValidationConstraint held) {
    if (held.getExplicitListValues() != null) {
      return Arrays.asList(held.getExplicitListValues());
    }
    var range = sheet.getWorkbook().getName(held.getFormula1());
    List<String> words = new ArrayList<>();
    AreaReference area =
        sheet.getWorkbook().getCreationHelper().createAreaReference(range.getRefersToFormula());
    for (CellReference cell : area.getAllReferencedCells()) {
      words.add(
          sheet
              .getWorkbook()
              .getSheet(cell.getSheetName())
              .getRow(cell.getRow())
              .getCell(cell.getCol())
              .getStringCellValue());
    }
    return words;
  }

  private static boolean covers(DataValidation validation, Cell cell) {
    return Arrays.stream(validation.getRegions().getCellRangeAddresses())
        .anyMatch(range -> range.isInRange(cell));
  }
}

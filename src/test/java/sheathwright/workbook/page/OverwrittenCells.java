package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.workbook.book.Cells;

/** Numbers typed over cells of a workbook: each has to make a check fail that did not. */
public final class OverwrittenCells {

  private OverwrittenCells() {}

  /**
   * Overwrites each of the cells in turn and puts it right again.
   *
   * @param names of cells and of columns of lists; with {@code shown_} before it, of what the first
   *     tab tells again
   * @param there those of them that no file may lack
   */
  public static void eachIsSeen(byte[] file, List<String> names, List<String> there)
      throws Exception {
    eachIsSeen(
        file,
        names,
        there,
        (workbook, evaluator) ->
            evaluator
                .evaluate(at(workbook, workbook.getName("checks_failing").getRefersToFormula()))
                .getNumberValue());
  }

  /** The same in a file that counts in its own way what was changed in it. */
  public static void eachIsSeen(
      byte[] file,
      List<String> names,
      List<String> there,
      ToDoubleBiFunction<XSSFWorkbook, FormulaEvaluator> failing)
      throws Exception {
    Map<String, List<String>> cells = new LinkedHashMap<>(Cells.byName(file));
    cells.putAll(toldAgain(file));
    cells.keySet().retainAll(names);
    assertThat(cells).hasSizeGreaterThan(5).containsKeys(there.toArray(String[]::new));
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      double before = failing.applyAsDouble(workbook, evaluator);
      for (Map.Entry<String, List<String>> named : cells.entrySet()) {
        for (String address : named.getValue()) {
          Cell cell = at(workbook, "'" + address.replace("!", "'!"));
          double right = evaluator.evaluate(cell).getNumberValue();
          boolean isFormula = cell.getCellType() == CellType.FORMULA;
          String formula = isFormula ? cell.getCellFormula() : "";
          cell.setBlank();
          cell.setCellValue(right == 17 ? 19 : 17);
          evaluator.notifyUpdateCell(cell);
          assertThat(failing.applyAsDouble(workbook, evaluator))
              .as("checks that fail when %s at %s is overwritten", named.getKey(), address)
              .isGreaterThan(before);
          if (isFormula) {
            cell.setCellFormula(formula);
          } else {
            cell.setCellValue(right);
          }
          evaluator.notifyUpdateCell(cell);
        }
      }
      assertThat(failing.applyAsDouble(workbook, evaluator)).isEqualTo(before);
    }
  }

  /** The cells of the first tab that point at one name and at nothing else. */
  private static Map<String, List<String>> toldAgain(byte[] file) throws Exception {
    Map<String, List<String>> told = new LinkedHashMap<>();
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      String first = workbook.getSheetName(0) + "!";
      Cells.formulas(file)
          .forEach(
              (address, formula) -> {
                if (address.startsWith(first) && workbook.getName(formula) != null) {
                  told.put("shown_" + formula, List.of(address));
                }
              });
    }
    return told;
  }

  /** The cell that a name stands for. */
  public static Cell at(XSSFWorkbook workbook, String formula) {
    CellReference at = new CellReference(formula);
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }
}

package sheathwright.workbook.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.workbook.file.LogProvider;

/**
 * A workbook as it was written, worked out anew with some of its cells changed. It is made from
 * what was written; nothing of the file that came back is opened.
 */
final class Recalculation implements AutoCloseable {

  static {
    LogProvider.settle();
  }

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final FormulaEvaluator evaluator;

  Recalculation(Reading was) {
    workbook.setCellFormulaValidation(false);
    was.panes().keySet().forEach(workbook::createSheet);
    was.names()
        .forEach(
            (name, formula) -> {
              Name named = workbook.createName();
              named.setNameName(name);
              named.setRefersToFormula(formula);
            });
    for (Pane pane : was.panes().values()) {
      XSSFSheet sheet = workbook.getSheet(pane.name());
      pane.rows()
          .forEach(
              (number, cells) -> {
                Row row = sheet.createRow(number);
                cells.forEach((column, held) -> put(row.createCell(column), held));
              });
    }
    evaluator = workbook.getCreationHelper().createFormulaEvaluator();
  }

  private static void put(Cell cell, Held held) {
    cell.setBlank();
    if (held.isFormula()) {
      cell.setCellFormula(held.formula());
    } else if (held.isNumber()) {
      cell.setCellValue(held.number());
    } else if (held.type() == Held.Type.TRUTH) {
      cell.setCellValue(held.value().equals("1"));
    } else if (!held.value().isEmpty()) {
      cell.setCellValue(held.value());
    }
  }

  /** Changes some cells. */
  void change(List<Change> changes) {
    changes.forEach(change -> put(change, change.now()));
  }

  /** Puts some cells back. */
  void restore(List<Change> changes) {
    changes.forEach(change -> put(change, change.was()));
  }

  private void put(Change change, Held held) {
    XSSFSheet sheet = workbook.getSheet(change.sheet());
    Row row = sheet.getRow(change.row());
    Row there = row == null ? sheet.createRow(change.row()) : row;
    Cell cell = there.getCell(change.column(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    try {
      put(cell, held);
    } catch (RuntimeException unreadable) {
      cell.setCellErrorValue(org.apache.poi.ss.usermodel.FormulaError.NAME.getCode());
    }
    evaluator.clearAllCachedResultValues();
  }

  /** What a cell comes to; nothing, if that is an error. */
  Optional<Held> value(Spot spot) {
    return value(spot.sheet(), spot.row(), spot.column());
  }

  Optional<Held> value(String sheet, int row, int column) {
    Row line = workbook.getSheet(sheet).getRow(row);
    Cell cell = line == null ? null : line.getCell(column);
    if (cell == null) {
      return Optional.of(Held.NOTHING);
    }
    try {
      CellValue value = evaluator.evaluate(cell);
      return Optional.ofNullable(value).map(Recalculation::held);
    } catch (RuntimeException unknown) {
      return Optional.empty();
    }
  }

  private static Held held(CellValue value) {
    return switch (value.getCellType()) {
      case NUMERIC ->
          new Held(Held.Type.NUMBER, "", Double.toString(value.getNumberValue()), false, false);
      case BOOLEAN ->
          new Held(Held.Type.TRUTH, "", value.getBooleanValue() ? "1" : "0", false, false);
      case ERROR -> new Held(Held.Type.ERROR, "", "", false, false);
      case STRING -> new Held(Held.Type.TEXT, "", value.getStringValue(), false, false);
      case BLANK, FORMULA, _NONE -> Held.NOTHING;
    };
  }

  /** All cells with a formula, as they are now. */
  List<Spot> formulas() {
    List<Spot> formulas = new ArrayList<>();
    workbook.forEach(
        sheet ->
            sheet.forEach(
                row ->
                    row.forEach(
                        cell -> {
                          if (cell.getCellType() == org.apache.poi.ss.usermodel.CellType.FORMULA) {
                            int line = row.getRowNum();
                            int column = cell.getColumnIndex();
                            formulas.add(
                                new Spot(sheet.getSheetName(), line, column, line, column));
                          }
                        })));
    return formulas;
  }

  @Override
  public void close() {
    try {
      workbook.close();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}

package sheathwright.workbook.book;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.figure.Figure;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;

/**
 * A workbook held open by POI's evaluator: opened once, edited many times. After each edit only
 * what rests on the edited cells is computed again, as in a spreadsheet program.
 */
public final class Engine implements AutoCloseable {

  private final XSSFWorkbook workbook;
  private final FormulaEvaluator evaluator;
  private final WrittenFile file;
  private final Map<String, Cell> formulas = new LinkedHashMap<>();
  private final Map<Cell, Object> before = new LinkedHashMap<>();
  private Set<String> solved;

  private Engine(byte[] bytes) {
    file = WrittenFile.of(bytes);
    workbook = Cells.opened(bytes);
    evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            formulas.put(Cells.address(cell), cell);
          }
        }
      }
    }
  }

  public static Engine of(byte[] file) {
    return new Engine(file);
  }

  /** The file as it was when it was opened. */
  WrittenFile file() {
    return file;
  }

  /** The cells that rest on what was solved when the book of this file was made. */
  Set<String> solvedCells(Book book) {
    if (solved == null) {
      solved = SolvedCells.addresses(file, book.solvedCells());
    }
    return solved;
  }

  /** What each formula cell is now, by address. */
  public Map<String, Object> values() {
    Map<String, Object> values = new LinkedHashMap<>();
    formulas.forEach((address, cell) -> values.put(address, plain(evaluator.evaluate(cell))));
    return values;
  }

  /** What each solution's guard says now. */
  Map<Solution, String> states(List<Solution> solutions) {
    Map<Solution, String> states = new LinkedHashMap<>();
    for (Solution solution : solutions) {
      states.put(solution, textOf(Names.legal(solution.state().name())));
    }
    return states;
  }

  /** What the cell with a name says now; an error is one too. */
  public String textOf(String name) {
    return plain(evaluator.evaluate(named(workbook.getName(name)))).toString();
  }

  /**
   * Sets inputs, and a copy of a price that was taken when the quote was issued. Every edit begins
   * from the workbook as it was opened.
   */
  void edit(Map<Traced, Place> newInputs) {
    setBack();
    newInputs.forEach(
        (value, place) -> {
          if (value instanceof Figure<?> open && open.isAbsent()) {
            set(at(place), open.shown());
          } else if (value instanceof Figure<?> figure) {
            set(at(place), figure.value());
            Name copy = workbook.getName(Names.legal("as_quoted_" + figure.name()));
            if (copy != null) {
              set(named(copy), figure.value());
            }
          } else {
            set(at(place), value.plain());
          }
        });
  }

  /** Sets one cell to a text or a number, as the one edit. */
  void edit(Place place, Object value) {
    setBack();
    set(at(place), value);
  }

  /** The workbook as it is now; its formulas still hold their old values. */
  byte[] bytes() {
    try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      workbook.write(bytes);
      return bytes.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  @Override
  public void close() {
    try {
      workbook.close();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private void setBack() {
    before.forEach(this::write);
    before.clear();
  }

  private void set(Cell cell, Object value) {
    Object old = held(cell);
    if (cell.getCellType() != CellType.FORMULA && !old.equals(value)) {
      before.putIfAbsent(cell, old);
      write(cell, value);
    }
  }

  private void write(Cell cell, Object value) {
    cell.setBlank(); // text that stands in the cell itself would stay beside a new one
    if (value instanceof Double number) {
      cell.setCellValue(number);
    } else if (!value.equals("")) {
      cell.setCellValue((String) value);
    }
    evaluator.notifyUpdateCell(cell);
  }

  /** A number or a text; empty if the cell is. */
  private static Object held(Cell cell) {
    return cell.getCellType() == CellType.NUMERIC
        ? (Object) cell.getNumericCellValue()
        : cell.toString();
  }

  /** Where an input stands; below what was solved, that may be another line than in the new one. */
  private Cell at(Place place) {
    Name name = place.name().isEmpty() ? null : workbook.getName(place.name());
    return name == null
        ? workbook.getSheet(place.tab()).getRow(place.row()).getCell(place.column())
        : named(name);
  }

  private Cell named(Name name) {
    CellReference at = new CellReference(name.getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  private static Object plain(CellValue value) {
    return switch (value.getCellType()) {
      case NUMERIC -> value.getNumberValue();
      case STRING -> value.getStringValue();
      case BOOLEAN -> value.getBooleanValue();
      default -> "#error";
    };
  }
}

package sheathwright.workbook.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.OverwrittenCells;

/** What stands in a document: its texts, tab by tab, and what its named cells hold. */
final class Texts {

  private final Map<String, List<String>> byTab = new LinkedHashMap<>();
  private final Map<String, Double> numbers = new HashMap<>();
  private final Map<String, String> words = new HashMap<>();

  static Texts of(byte[] book) {
    return new Texts(book);
  }

  private Texts(byte[] book) {
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      for (Sheet sheet : workbook) {
        List<String> all = new ArrayList<>();
        byTab.put(sheet.getSheetName(), all);
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.STRING) {
              all.add(cell.getStringCellValue());
            }
          }
        }
      }
      for (Name name : workbook.getAllNames()) {
        String formula = name.getRefersToFormula();
        if (!name.getNameName().startsWith("_xlnm")) {
          put(name.getNameName(), OverwrittenCells.at(workbook, formula.replaceAll("!.*:", "!")));
        }
      }
      if (workbook.getSheet("Working") != null) {
        workbook.getSheet("Working").forEach(this::step);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** A step of the working, under its label as a name is written. */
  private void step(Row row) {
    Cell label = row.getCell(0);
    Cell value = row.getCell(1);
    if (value != null && label != null && label.getCellType() == CellType.STRING) {
      String name = label.getStringCellValue().replaceFirst(",.*", "").replace(' ', '_');
      if (!numbers.containsKey(name)) {
        put(name, value);
      }
    }
  }

  private void put(String name, Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    if (type == CellType.NUMERIC) {
      numbers.put(name, cell.getNumericCellValue());
    } else if (type == CellType.STRING) {
      words.put(name, cell.getStringCellValue());
    }
  }

  /** The tabs, in their order. */
  List<String> tabs() {
    return List.copyOf(byTab.keySet());
  }

  /** The texts of a tab. */
  List<String> on(String tab) {
    return byTab.get(tab);
  }

  /** What the last line of a list holds in a column. */
  double last(String column) {
    return numbers.get(column);
  }

  /** What a named cell, or a step of the working, holds. */
  double number(String name) {
    return numbers.get(name);
  }

  /** The words that a named cell holds. */
  String word(String name) {
    return words.get(name);
  }
}

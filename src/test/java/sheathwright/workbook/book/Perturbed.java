package sheathwright.workbook.book;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.job.JobTables;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;

/** Inputs changed one at a time, in a table and in the workbook written from it. */
public final class Perturbed {

  private Perturbed() {}

  /** Other things that an input's cell could say, the likeliest to be allowed first. */
  static List<String> otherTexts(Traced input) {
    List<String> texts = new ArrayList<>();
    if (input instanceof Figure<?> figure) {
      double number = figure.isAbsent() ? 0 : figure.value();
      for (double other :
          new double[] {
            number * 1.0625,
            number * 0.9375,
            number + 1,
            number - 1,
            number + 0.125,
            number + 0.03125
          }) {
        if (other != number) {
          texts.add(Double.toString(other));
        }
      }
      texts.add(number == 180 ? "240" : "180");
    } else {
      Choice<?> choice = (Choice<?>) input;
      texts.addAll(choice.options());
      texts.add(choice.plain() + " changed");
      texts.add("2030-01-31"); // where it takes nothing but a date
      texts.add(choice.plain().replace("22", "21")); // a corner moved
      texts.remove(choice.plain());
    }
    return texts;
  }

  /** A job's tables as they were read from files. */
  public static Map<String, CsvFile> files(JobTables tables) {
    Map<String, CsvFile> files = new LinkedHashMap<>();
    tables.files().forEach((name, file) -> files.put(name, (CsvFile) file));
    return files;
  }

  /** The table with one cell changed. */
  public static CsvFile with(RowSource file, long line, int column, String text) {
    List<RowSource.Line> lines =
        file.lines().stream()
            .map(
                old -> {
                  if (old.number() != line) {
                    return old;
                  }
                  List<String> cells = new ArrayList<>(old.cells());
                  cells.set(column, text);
                  return new RowSource.Line(line, cells);
                })
            .toList();
    return new CsvFile(file.name(), ((CsvFile) file).separator(), file.header(), lines);
  }

  /** Where an input stands; below what was solved, that may be another line than in the new one. */
  private static Cell at(XSSFWorkbook workbook, Place place) {
    Name name = place.name().isEmpty() ? null : workbook.getName(place.name());
    if (name == null) {
      return workbook.getSheet(place.tab()).getRow(place.row()).getCell(place.column());
    }
    CellReference named = new CellReference(name.getRefersToFormula());
    return workbook.getSheet(named.getSheetName()).getRow(named.getRow()).getCell(named.getCol());
  }

  /**
   * The old workbook with every input set to what it is in the new one, prices as they are quoted
   * then; its formulas still hold their old values.
   */
  static byte[] edited(byte[] old, Map<Traced, Place> newInputs) {
    try (XSSFWorkbook workbook = Cells.opened(old);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      newInputs.forEach(
          (value, place) -> {
            Cell cell = at(workbook, place);
            if (cell.getCellType() != CellType.FORMULA) {
              cell.setBlank(); // text that stands in the cell itself would stay beside a new one
            }
            if (value instanceof Figure<?> open && open.isAbsent()) {
              cell.setCellValue(open.shown());
            } else if (value instanceof Figure<?> figure) {
              cell.setCellValue(figure.value());
              asQuoted(workbook, figure);
            } else {
              cell.setCellValue(value.plain());
            }
          });
      workbook.write(bytes);
      return bytes.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /**
   * Sets the copy of a restated price that was taken when the quote was issued, if there is one.
   */
  private static void asQuoted(XSSFWorkbook workbook, Figure<?> price) {
    Name copy = workbook.getName(Names.legal("as_quoted_" + price.name()));
    if (copy != null) {
      CellReference at = new CellReference(copy.getRefersToFormula());
      workbook
          .getSheet(at.getSheetName())
          .getRow(at.getRow())
          .getCell(at.getCol())
          .setCellValue(price.value());
    }
  }

  /** All but the cells that say whether the file is as it was written. */
  public static Map<String, Object> comparable(byte[] file, Map<String, Object> values) {
    Map<String, Object> rest = new LinkedHashMap<>(values);
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      workbook.getAllNames().stream()
          .filter(name -> name.getNameName().startsWith("state_of_"))
          .map(name -> name.getRefersToFormula().replace("'", "").replace("$", ""))
          .forEach(rest::remove);
      return rest;
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}

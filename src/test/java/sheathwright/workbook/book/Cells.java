package sheathwright.workbook.book;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The cells of a workbook by address, as they were written and as an engine recalculates them. */
public final class Cells {

  private Cells() {}

  /** The value that each formula cell holds in the file. */
  public static Map<String, Object> written(byte[] file) {
    return WrittenFile.of(file).values();
  }

  /** The same, but for the cells that say whether the file is as it was written. */
  public static Map<String, Object> comparable(byte[] file) {
    return WrittenFile.of(file).comparable();
  }

  /** The value that POI's evaluator gives each formula cell, whatever the file holds. */
  public static Map<String, Object> byPoi(byte[] file) {
    try (Engine engine = Engine.of(file)) {
      return engine.values();
    }
  }

  /** The text of each formula. */
  public static Map<String, String> formulas(byte[] file) {
    return WrittenFile.of(file).formulas();
  }

  /** Every name of a workbook with the cells that it stands for, in order. */
  public static Map<String, List<String>> byName(byte[] file) {
    return WrittenFile.of(file).names();
  }

  public static String address(Cell cell) {
    return cell.getSheet().getSheetName() + "!" + cell.getAddress();
  }

  public static XSSFWorkbook opened(byte[] file) {
    try {
      return new XSSFWorkbook(new ByteArrayInputStream(file));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}

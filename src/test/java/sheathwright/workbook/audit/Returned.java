package sheathwright.workbook.audit;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellCopyContext;
import org.apache.poi.ss.usermodel.CellCopyPolicy;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.ss.util.CellUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook of ours that somebody has had in his hands. */
public final class Returned {

  private Returned() {}

  /** Changed in a program that recalculates what it saves. */
  public static byte[] with(byte[] book, Consumer<XSSFWorkbook> change) {
    return saved(
        book,
        change.andThen(
            workbook -> workbook.getCreationHelper().createFormulaEvaluator().evaluateAll()));
  }

  /** Changed in a program that does not. */
  public static byte[] saved(byte[] book, Consumer<XSSFWorkbook> change) {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(book));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      workbook.setCellFormulaValidation(false);
      change.accept(workbook);
      workbook.write(bytes);
      return bytes.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** The cell of a name, or of a line of a list, counted from 0. */
  public static Cell cell(XSSFWorkbook workbook, String name, int line) {
    String formula = workbook.getName(name).getRefersToFormula().split(":")[0];
    CellReference at = new CellReference(formula);
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow() + line).getCell(at.getCol());
  }

  /** A number typed into a cell, whatever stood there. */
  public static void typed(Cell cell, double number) {
    cell.setBlank();
    cell.setCellValue(number);
  }

  /** A column taken out as a spreadsheet program does it: names and formulas move along. */
  public static void withoutColumn(XSSFWorkbook workbook, Sheet sheet, int column) {
    each(
        workbook,
        spot -> {
          boolean isThere = spot.sheet().equals(sheet.getSheetName());
          if (!isThere || spot.lastColumn() < column) {
            return Optional.of(spot);
          }
          boolean isGone = spot.column() == column && spot.lastColumn() == column;
          return isGone
              ? Optional.empty()
              : Optional.of(
                  new Spot(
                      spot.sheet(),
                      spot.row(),
                      spot.column() > column ? spot.column() - 1 : spot.column(),
                      spot.lastRow(),
                      spot.lastColumn() - 1));
        });
    for (Row row : sheet) {
      for (int across = column; across < row.getLastCellNum(); across++) {
        put(row, across, row.getCell(across + 1));
      }
    }
  }

  /** A block cut out and put elsewhere on its tab: names and formulas follow it. */
  public static void moveBlock(
      XSSFWorkbook workbook, String tab, String block, int across, int down) {
    CellRangeAddress from = CellRangeAddress.valueOf(block);
    each(
        workbook,
        spot ->
            Optional.of(
                spot.sheet().equals(tab)
                        && from.isInRange(spot.row(), spot.column())
                        && from.isInRange(spot.lastRow(), spot.lastColumn())
                    ? spot.moved(down, across)
                    : spot));
    Sheet sheet = workbook.getSheet(tab);
    for (int row = from.getLastRow(); row >= from.getFirstRow(); row--) {
      Row to = sheet.getRow(row + down);
      for (int column = from.getFirstColumn(); column <= from.getLastColumn(); column++) {
        Cell cell = sheet.getRow(row).getCell(column);
        put(to == null ? sheet.createRow(row + down) : to, column + across, cell);
        put(sheet.getRow(row), column, null);
        to = sheet.getRow(row + down);
      }
    }
  }

  private static void each(XSSFWorkbook workbook, References.Places places) {
    for (Name name : workbook.getAllNames()) {
      name.setRefersToFormula(References.moved(name.getRefersToFormula(), "", places));
    }
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            cell.setCellFormula(
                References.moved(cell.getCellFormula(), sheet.getSheetName(), places));
          }
        }
      }
    }
  }

  private static void put(Row row, int column, Cell other) {
    if (row.getCell(column) != null) {
      row.removeCell(row.getCell(column));
    }
    if (other != null) {
      CellUtil.copyCell(other, row.createCell(column), new CellCopyPolicy(), new CellCopyContext());
      // Copying moves what a formula points at; cutting does not.
      if (other.getCellType() == CellType.FORMULA) {
        row.getCell(column).setCellFormula(other.getCellFormula());
      }
    }
  }

  /** One part of the file written anew as text; with another name, put in. */
  public static byte[] part(byte[] book, String name, UnaryOperator<String> change) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(book));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      boolean isThere = false;
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] part = in.readAllBytes();
        boolean isMeant = entry.getName().equals(name);
        isThere |= isMeant;
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(isMeant ? changed(part, change) : part);
      }
      if (!isThere) {
        out.putNextEntry(new ZipEntry(name));
        out.write(changed(new byte[0], change));
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  private static byte[] changed(byte[] part, UnaryOperator<String> change) {
    return change.apply(new String(part, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
  }
}

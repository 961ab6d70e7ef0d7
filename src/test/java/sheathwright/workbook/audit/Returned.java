package sheathwright.workbook.audit;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellReference;
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

package sheathwright.year;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A crew's workbook as it is filled in on the roof, its rows sorted the other way round. */
final class CrewSheet {

  /** Who fills it in. */
  static final String BY = "T. Belmarsh";

  private final Random random;
  private final Set<String> places = new TreeSet<>();

  private CrewSheet(Random random) {
    this.random = random;
  }

  /** Fills one in where it lies; gives the places that something was found at. */
  static Set<String> filled(Path file, Random random, String today) {
    CrewSheet crew = new CrewSheet(random);
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      for (Row row : book.getSheet("start")) {
        switch (text(row, 0)) {
          case "by" -> row.getCell(1).setCellValue(BY);
          case "on" -> row.getCell(1).setCellValue(today);
          default -> {
            // it stays as it is
          }
        }
      }
      book.sheetIterator()
          .forEachRemaining(
              sheet -> {
                if (sheet.getSheetName().startsWith("Crew ")) {
                  crew.fill(sheet);
                }
              });
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      book.write(bytes);
      Files.write(file, bytes.toByteArray());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return crew.places;
  }

  private void fill(Sheet sheet) {
    List<String> columns = List.of();
    List<Row> rows = new ArrayList<>();
    for (Row row : sheet) {
      if (text(row, 0).equals("sheet")) {
        columns = texts(row);
      } else if (!columns.isEmpty() && !text(row, 0).isEmpty()) {
        rows.add(row);
      }
    }
    for (Row row : rows) {
      boolean isFree = text(row, columns.indexOf("mark")).isEmpty();
      if (isFree && random.nextInt(6) == 0) {
        cell(row, columns.indexOf("finding")).setCellValue("rot");
        cell(row, columns.indexOf("probe_in")).setCellValue(0.5);
        places.add(text(row, 0));
      }
    }
    for (int i = 0; i < rows.size() / 2; i++) {
      swap(rows.get(i), rows.get(rows.size() - 1 - i), columns.size());
    }
  }

  private static void swap(Row one, Row other, int columns) {
    for (int column = 0; column < columns; column++) {
      Cell left = cell(one, column);
      Cell right = cell(other, column);
      if (left.getCellType() == CellType.NUMERIC || right.getCellType() == CellType.NUMERIC) {
        Double number = number(left);
        set(left, number(right));
        set(right, number);
      } else {
        String text = left.getStringCellValue();
        left.setCellValue(right.getStringCellValue());
        right.setCellValue(text);
      }
    }
  }

  private static Double number(Cell cell) {
    return cell.getCellType() == CellType.NUMERIC ? cell.getNumericCellValue() : null;
  }

  private static void set(Cell cell, Double number) {
    if (number == null) {
      cell.setBlank();
    } else {
      cell.setCellValue(number);
    }
  }

  private static Cell cell(Row row, int column) {
    return row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  private static List<String> texts(Row row) {
    List<String> texts = new ArrayList<>();
    for (int column = 0; !text(row, column).isEmpty(); column++) {
      texts.add(text(row, column));
    }
    return texts;
  }

  private static String text(Row row, int column) {
    Cell cell = row.getCell(column);
    return cell == null ? "" : cell.toString();
  }
}

package sheathwright.job.tab;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.Shown;
import sheathwright.job.file.CellCount;

/**
 * The cells of one sheet that hold anything, by line and column counted from 0, as somebody would
 * type them (ECMA-376, 18.3.1.4).
 */
final class SheetCells {

  /** More lines or columns than these are no table's. */
  private static final int MOST_LINES = 200_100;

  private static final int MOST_COLUMNS = 400;
  private static final int ALPHABET = 26;
  private static final Pattern ADDRESS = Pattern.compile("([A-Z]{1,3})(\\d{1,7})");
  private static final Pattern BY_NUMBER = Pattern.compile("_x([0-9A-Fa-f]{4})_");

  /** What stands in a cell. */
  record Cell(String text, boolean isFormula) {}

  private final SortedMap<Integer, SortedMap<Integer, Cell>> lines = new TreeMap<>();
  private final CellCount count;

  /** Reads a sheet's part. */
  SheetCells(PartReader sheet, List<String> shared, NumberForms forms, String name) {
    count = new CellCount(name);
    int row = -1;
    int column = -1;
    while (sheet.next()) {
      if (sheet.begins("row")) {
        row = sheet.attribute("r").map(number -> Integer.parseInt(number) - 1).orElse(row + 1);
        column = -1;
      } else if (sheet.begins("c")) {
        Matcher address = ADDRESS.matcher(sheet.attribute("r").orElse(""));
        if (address.matches()) {
          row = Integer.parseInt(address.group(2)) - 1;
          column = number(address.group(1));
        } else {
          column++;
        }
        read(sheet, row, column, shared, forms, name);
      }
    }
  }

  private void read(
      PartReader sheet, int row, int column, List<String> shared, NumberForms forms, String name) {
    String kind = sheet.attribute("t").orElse("n");
    int style = Integer.parseInt(sheet.attribute("s").orElse("0"));
    String value = "";
    boolean isFormula = false;
    while (sheet.next() && !sheet.ends("c")) {
      if (sheet.begins("f")) {
        isFormula = true;
      } else if (sheet.begins("v")) {
        value = sheet.text();
      } else if (sheet.begins("is")) {
        value = string(sheet, "is");
      }
    }
    if (value.isEmpty()) {
      return;
    }
    if (row >= MOST_LINES || column >= MOST_COLUMNS) {
      throw WorkbookParts.refused(
          name,
          Shown.text(
              "something stands in %s, beyond the %,d lines and %s columns that are read; take it out",
              address(row, column), MOST_LINES, MOST_COLUMNS));
    }
    count.add(0);
    String text =
        switch (kind) {
          case "s" -> shared.get(Integer.parseInt(value));
          case "b" -> value.equals("1") ? "yes" : "no";
          case "n" -> forms.text(Double.parseDouble(value), style);
          case "inlineStr" -> value;
          default -> plain(value);
        };
    lines.computeIfAbsent(row, key -> new TreeMap<>()).put(column, new Cell(text, isFormula));
  }

  /** A text of the part that begins here, its runs put together, without what tells its sound. */
  static String string(PartReader part, String element) {
    StringBuilder text = new StringBuilder();
    boolean isSound = false;
    while (part.next() && !part.ends(element)) {
      if (part.begins("rPh") || part.ends("rPh")) {
        isSound = part.begins("rPh");
      } else if (part.begins("t") && !isSound) {
        text.append(part.text());
      }
    }
    return plain(text.toString());
  }

  /** The texts that the cells of a workbook share. */
  static List<String> shared(WorkbookParts parts) {
    List<String> texts = new ArrayList<>();
    if (parts.has("xl/sharedStrings.xml")) {
      PartReader part = parts.part("xl/sharedStrings.xml");
      CellCount count = new CellCount(parts.name());
      while (part.next()) {
        if (part.begins("si")) {
          texts.add(string(part, "si"));
          count.add(0);
        }
      }
    }
    return texts;
  }

  /** A text in which {@code _x0041_} stands for a character by its number. */
  private static String plain(String written) {
    String text = written.replace("\r\n", "\n");
    return text.contains("_x")
        ? BY_NUMBER
            .matcher(text)
            .replaceAll(
                found ->
                    Matcher.quoteReplacement(
                        Character.toString(Integer.parseInt(found.group(1), 16))))
        : text;
  }

  private static int number(String letters) {
    int number = 0;
    for (int i = 0; i < letters.length(); i++) {
      number = number * ALPHABET + letters.charAt(i) - 'A' + 1;
    }
    return number - 1;
  }

  /** A cell's address, such as {@code C4}. */
  static String address(int row, int column) {
    StringBuilder letters = new StringBuilder();
    for (int left = column + 1; left > 0; left = (left - 1) / ALPHABET) {
      letters.insert(0, (char) ('A' + (left - 1) % ALPHABET));
    }
    return letters.toString() + (row + 1);
  }

  /** Those that hold anything, by line and column. */
  SortedMap<Integer, SortedMap<Integer, Cell>> lines() {
    return lines;
  }
}

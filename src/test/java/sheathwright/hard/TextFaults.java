package sheathwright.hard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Spoils text as hands, programs and mischief do: cells, lines, columns, signs and single letters.
 * The same seed spoils the same text alike.
 */
record TextFaults(Random random) {

  private static final List<String> NASTY =
      List.of(
          "",
          " ",
          "0",
          "-0",
          "-1",
          "1e308",
          "-1e308",
          "1e-320",
          "NaN",
          "Infinity",
          "1/0",
          "-1/2",
          "1 1/2/3",
          "\u00BD",
          "99999999999999999999",
          "0x10",
          "1,000",
          "1.000,5",
          "8:0",
          "0:12",
          "L/0",
          "12'-3\"",
          "16-11 31/32",
          "5 %",
          "$5",
          "=1+1",
          "=HYPERLINK(\"x\")",
          "+1",
          "@SUM(A1)",
          "-2+3+cmd",
          "'",
          "\"",
          "\"\"\"",
          "yes",
          "no",
          "maybe",
          "2027-02-30",
          "0000-01-01",
          "+999999999-12-31",
          "2027-05-18T14:30",
          "2027-05-18T25:61",
          "5/6/27",
          "A-1-1",
          "A-0-0",
          "A-99999999999-1",
          "../../x",
          "/",
          "C:\\x",
          "x.csv",
          "\u0000",
          "\u0007\u001B[31m",
          "\uFEFF",
          "\u202E",
          "\uD83D\uDCA5",
          "\uD83D",
          "\u00A0",
          "%s%n%d",
          "{0}{name}",
          "<b>&amp;</b>]]>",
          "x".repeat(300),
          "9".repeat(400),
          "(".repeat(3_000),
          "y".repeat(40_000));

  private static final String SIGNS =
      ",;\t\"'\n\r=+-/.:()[]{}<>&%$#@!|\\ 0123456789eExX\u00BD\u2019";

  /** The text with one to four things spoiled. */
  String spoiled(String text) {
    String spoiled = text;
    for (int times = 1 + random.nextInt(4); times > 0; times--) {
      spoiled = spoiledOnce(spoiled);
    }
    return spoiled;
  }

  /** One of the values that readers are seldom given. */
  String nasty() {
    return NASTY.get(random.nextInt(NASTY.size()));
  }

  private String spoiledOnce(String text) {
    return switch (random.nextInt(10)) {
      case 0, 1, 2, 3 -> inALine(text, this::cellReplaced);
      case 4 -> inALine(text, this::cellMoved);
      case 5 -> linesMoved(text);
      case 6 -> columnCut(text);
      case 7 -> letterChanged(text);
      case 8 -> pieceCopied(text);
      default -> wholeChanged(text);
    };
  }

  private interface Change {
    String of(String line);
  }

  private String inALine(String text, Change change) {
    List<String> lines = lines(text);
    int line = random.nextInt(lines.size());
    lines.set(line, change.of(lines.get(line)));
    return String.join("\n", lines);
  }

  private String cellReplaced(String line) {
    String[] cells = line.split(",", -1);
    cells[random.nextInt(cells.length)] = nasty();
    return String.join(",", cells);
  }

  private String cellMoved(String line) {
    List<String> cells = new ArrayList<>(Arrays.asList(line.split(",", -1)));
    String cell = cells.remove(random.nextInt(cells.size()));
    if (random.nextBoolean()) {
      cells.add(random.nextInt(cells.size() + 1), cell);
    }
    return String.join(",", cells);
  }

  private String linesMoved(String text) {
    List<String> lines = lines(text);
    int line = random.nextInt(lines.size());
    String moved = lines.get(line);
    switch (random.nextInt(4)) {
      case 0 -> lines.remove(line);
      case 1 -> lines.add(random.nextInt(lines.size()), moved);
      case 2 -> lines.add(line, "");
      default -> lines.add(0, lines.remove(line));
    }
    return String.join("\n", lines);
  }

  private String columnCut(String text) {
    int column = random.nextInt(6);
    List<String> lines = lines(text);
    lines.replaceAll(
        line -> {
          List<String> cells = new ArrayList<>(Arrays.asList(line.split(",", -1)));
          if (column < cells.size()) {
            cells.remove(column);
          }
          return String.join(",", cells);
        });
    return String.join("\n", lines);
  }

  private String letterChanged(String text) {
    StringBuilder letters = new StringBuilder(text);
    for (int times = 1 + random.nextInt(5); times > 0 && !letters.isEmpty(); times--) {
      int at = random.nextInt(letters.length());
      switch (random.nextInt(3)) {
        case 0 -> letters.deleteCharAt(at);
        case 1 -> letters.insert(at, sign());
        default -> letters.setCharAt(at, sign());
      }
    }
    return letters.toString();
  }

  private char sign() {
    return random.nextInt(8) == 0
        ? (char) random.nextInt(0x3000)
        : SIGNS.charAt(random.nextInt(SIGNS.length()));
  }

  private String pieceCopied(String text) {
    if (text.isEmpty()) {
      return nasty();
    }
    int from = random.nextInt(text.length());
    int to = Math.min(text.length(), from + 1 + random.nextInt(60));
    int at = random.nextInt(text.length());
    return text.substring(0, at) + text.substring(from, to) + text.substring(at);
  }

  private String wholeChanged(String text) {
    return switch (random.nextInt(7)) {
      case 0 -> text.substring(0, random.nextInt(text.length() + 1));
      case 1 -> text.replace(',', ';');
      case 2 -> text.replace("\n", "\r\n");
      case 3 -> "\uFEFF" + text;
      case 4 -> text.toUpperCase(java.util.Locale.ROOT);
      case 5 -> text + "\n".repeat(1_000);
      default -> text.replace("\n", "\n\n");
    };
  }

  private static List<String> lines(String text) {
    return new ArrayList<>(Arrays.asList(text.split("\n", -1)));
  }
}

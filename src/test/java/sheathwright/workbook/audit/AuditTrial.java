package sheathwright.workbook.audit;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.job.file.Manifest;

/**
 * Workbooks in which somebody made a mistake, and workbooks that somebody only filled in, each
 * saved by another program than ours: how many of the mistakes an audit finds, and what it says of
 * the others.
 */
public final class AuditTrial {

  private static final int TRIES = 40;

  private static final double NANOSECONDS = 1e9;

  private final Map<String, byte[]> books;
  private final Random random;
  private final Map<Mistake, int[]> counts = new EnumMap<>(Mistake.class);
  private final List<String> missed = new ArrayList<>();
  private final Map<String, List<Double>> seconds = new TreeMap<>();

  /** A trial over some workbooks of ours, the same for the same seed. */
  public AuditTrial(Map<String, byte[]> books, long seed) {
    this.books = new TreeMap<>(books);
    random = new Random(seed);
  }

  /** Makes so many mistakes, kind by kind and book by book, and counts those that are found. */
  public void makeMistakes(int number) {
    List<String> names = List.copyOf(books.keySet());
    int made = 0;
    for (int i = 0; made < number; i++) {
      Mistake mistake = Mistake.values()[made % Mistake.values().length];
      String name = names.get(i % names.size());
      byte[] file = withMistake(mistake, books.get(name));
      if (file.length > 0) {
        made++;
        long began = System.nanoTime();
        boolean isFound = isSeen(books.get(name), file);
        seconds
            .computeIfAbsent(name, none -> new ArrayList<>())
            .add((System.nanoTime() - began) / NANOSECONDS);
        int[] count = counts.computeIfAbsent(mistake, none -> new int[2]);
        count[0]++;
        count[1] += isFound ? 1 : 0;
        if (!isFound) {
          missed.add(name + ": " + mistake.words());
        }
      }
    }
  }

  private byte[] withMistake(Mistake mistake, byte[] book) {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(book))) {
      workbook.setCellFormulaValidation(false);
      for (int i = 0; i < TRIES; i++) {
        if (mistake.make(workbook, random)) {
          return saved(workbook);
        }
      }
      return new byte[0];
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static byte[] saved(XSSFWorkbook workbook) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    workbook.write(bytes);
    return bytes.toByteArray();
  }

  private static boolean isSeen(byte[] book, byte[] file) {
    Reading was = ManifestReading.of(Manifest.in(book).orElseThrow()).orElseThrow();
    return Comparison.of(was, BookReading.of("file", file)).findings().stream()
        .anyMatch(finding -> finding.verdict().stops());
  }

  /** A book with so many of its inputs changed within what they take, recalculated and saved. */
  public byte[] filledIn(byte[] book, int inputs) {
    Reading was = ManifestReading.of(Manifest.in(book).orElseThrow()).orElseThrow();
    Allowed allowed = new Allowed(was);
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(book))) {
      List<Change> open = new ArrayList<>();
      for (Pane pane : was.panes().values()) {
        pane.rows()
            .forEach(
                (row, cells) ->
                    cells.forEach(
                        (column, held) -> {
                          if (held.isOpen() && !held.isFormula()) {
                            open.add(new Change(pane.name(), row, column, held, held));
                          }
                        }));
      }
      for (int i = 0; i < inputs && !open.isEmpty(); i++) {
        Change input = open.get(random.nextInt(open.size()));
        CellAddress at = new CellAddress(input.row(), input.column());
        Cell cell = workbook.getSheet(input.sheet()).getRow(at.getRow()).getCell(at.getColumn());
        fill(cell, input, allowed);
      }
      workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
      return saved(workbook);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** With as many digits as a hand types, and every spreadsheet program saves. */
  private static double typed(double number) {
    return new BigDecimal(number).round(new MathContext(12)).doubleValue();
  }

  private static void fill(Cell cell, Change input, Allowed allowed) {
    Predicate<Held> isTaken =
        held ->
            allowed
                .broken(new Change(input.sheet(), input.row(), input.column(), input.was(), held))
                .isEmpty();
    if (input.was().isNumber()) {
      double number = input.was().number();
      for (double each : new double[] {number * 1.0625, number + 1, number - 1, number * 0.9375}) {
        double other = typed(each);
        if (isTaken.test(new Held(Held.Type.NUMBER, "", Double.toString(other), true, false))) {
          cell.setCellValue(other);
          return;
        }
      }
    } else if (isTaken.test(new Held(Held.Type.TEXT, "", "somebody else's words", true, false))) {
      cell.setBlank();
      cell.setCellValue("somebody else's words");
    }
  }

  /** What an audit says against a book that was only filled in. */
  public static List<Finding> alarms(byte[] book, byte[] file) {
    return Audit.between(book, file).findings().stream()
        .filter(
            finding ->
                finding.verdict() != Verdict.FOLLOW && finding.verdict() != Verdict.SOLVE_AGAIN)
        .toList();
  }

  /** How many mistakes of each kind were made and found. */
  Map<Mistake, int[]> counts() {
    return counts;
  }

  /** How long each audit of each workbook took, read and compared. */
  Map<String, List<Double>> seconds() {
    return seconds;
  }

  /** The mistakes that were not found. */
  List<String> missed() {
    return missed;
  }
}

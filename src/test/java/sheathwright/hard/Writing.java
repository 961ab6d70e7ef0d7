package sheathwright.hard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What writes files that belong together: the folder it begins in, and what is run there. */
enum Writing {
  /** Two workbooks over two older ones. */
  QUOTE("quote", "job", "--force") {
    @Override
    void prepare(Path office) throws IOException {
      Path job = demo("quince-hollow", office.resolve("job"));
      done("quote", job);
      fact(job, "customer,Somebody Else of Nowhere,");
    }
  },

  /** Two workbooks, a copy of each in the folder sent, and a line of a table. */
  ISSUE("quote", "job", "--issue", "--on", "2027-05-04") {
    @Override
    void prepare(Path office) throws IOException {
      surveyed(office);
    }
  },

  /** What was agreed becomes a table. */
  AGREE("agree", "job", "--on", "2027-05-11") {
    @Override
    void prepare(Path office) throws IOException {
      done("quote", surveyed(office), "--issue", "--on", "2027-05-04");
    }
  },

  /** A workbook, its copy in the folder sent, and lines of three tables. */
  CHANGE_ORDER("change-order", "job", "--on", "2027-06-01") {
    @Override
    void prepare(Path office) throws IOException {
      opened(office);
    }
  },

  /** Tables that a crew's workbook adds to. */
  TAKE_IN("take-in", "job", "crew.xlsx") {
    @Override
    void prepare(Path office) throws IOException {
      Path job = demo("quince-hollow", office.resolve("job"));
      Path crew = office.resolve("crew.xlsx");
      done("crew", job, "-o", crew);
      filled(crew);
    }
  },

  /** Two workbooks, their copies, and a line in a table above the job. */
  CLOSE("close", "job", "--on", "2027-06-04") {
    @Override
    void prepare(Path office) throws IOException {
      Path job = opened(office);
      done("change-order", job, "--on", "2027-06-01");
      replace(job.resolve("orders.csv"), "offered,,,", "approved,the owner,signed,2027-06-02");
      Files.writeString(office.resolve("history.csv"), Files.readString(LIFE.resolve(HISTORY)));
    }
  },

  /** A table and a workbook of all jobs. */
  SEASON("season", "jobs", "--force") {
    @Override
    void prepare(Path office) throws IOException {
      Path jobs = Files.createDirectory(office.resolve("jobs"));
      demo("quince-hollow", jobs.resolve("one"));
      done("season", jobs);
      demo("cinder-brook", jobs.resolve("two"));
    }
  },

  /** A session's workbook over an older one. */
  SAVE("run", "session.txt") {
    @Override
    void prepare(Path office) throws IOException {
      Path session = office.resolve("session.txt");
      String lines =
          "deck = %d ft * 16 ft\nsheets = sheetsByArea(deck, waste = 10 %%)\nsaveOver(\"%s\")\n";
      Files.writeString(session, lines.formatted(42, office.resolve("roof.xlsx")));
      done("run", session);
      Path later = office.resolveSibling(COPY).resolve("roof.xlsx");
      Files.writeString(session, lines.formatted(40, later));
    }
  },

  /** A function down a long table, as a workbook over an older one. */
  FILL("fill", "nails_per_sheet", "cases.csv", "-o", "filled.xlsx", "--force") {
    @Override
    void prepare(Path office) throws IOException {
      Path cases = office.resolve("cases.csv");
      Files.writeString(cases, HEADINGS + "16,6,12\n");
      done("fill", "nails_per_sheet", cases, "-o", office.resolve("filled.xlsx"));
      String rows = "16,6,12\n24,4,6\n19.2,3,8\n".repeat(300);
      Files.writeString(cases, HEADINGS + rows);
    }
  };

  /** The name of the folder that every copy of what is prepared lies in, beside it. */
  static final String COPY = "office";

  private static final Path LIFE = Path.of("demo-data", "whole-life");
  private static final String HEADINGS = "support_spacing_in,edge_spacing_in,field_spacing_in\n";
  private static final String HISTORY = "history.csv";

  private final List<String> words;

  /**
   * @param words the command; one that names what stands in the office's folder is a path there
   */
  Writing(String... words) {
    this.words = List.of(words);
  }

  /** Makes everything as it is before, in an empty folder. */
  abstract void prepare(Path office) throws IOException;

  /** The command, for a copy of what was prepared. */
  List<String> command(Path office) {
    Stream<String> operands =
        words.stream()
            .skip(1)
            .map(
                word ->
                    Files.exists(office.resolve(word)) ? office.resolve(word).toString() : word);
    return Stream.concat(Stream.of(words.get(0)), operands).toList();
  }

  private static Path surveyed(Path office) throws IOException {
    Path job = Sent.copied(LIFE.resolve("2-surveyed"), office.resolve("job"));
    for (String table : List.of("prices.csv", "rates.csv", "stages.csv", "job.csv")) {
      Files.writeString(
          job.resolve(table), Files.readString(LIFE.resolve("3-quoted").resolve(table)));
    }
    return job;
  }

  private static Path opened(Path office) throws IOException {
    Path job = Sent.copied(LIFE.resolve("4-agreed"), office.resolve("job"));
    fact(job, "opened_on,2027-06-01,");
    Files.writeString(
        job.resolve("marks.csv"), Files.readString(LIFE.resolve("5-opened").resolve("marks.csv")));
    return job;
  }

  private static Path demo(String name, Path into) {
    return Sent.copied(Path.of("demo-data", name), into);
  }

  private static void fact(Path job, String line) throws IOException {
    String key = line.substring(0, line.indexOf(',') + 1);
    String kept =
        Files.readString(job.resolve("job.csv"))
            .lines()
            .filter(fact -> !fact.startsWith(key))
            .reduce("", (all, fact) -> all + fact + "\n");
    Files.writeString(job.resolve("job.csv"), kept + line + "\n");
  }

  private static void replace(Path table, String text, String other) throws IOException {
    Files.writeString(table, Files.readString(table).replace(text, other));
  }

  private static void filled(Path crew) throws IOException {
    byte[] sent = Files.readAllBytes(crew);
    try (Workbook book = new XSSFWorkbook(new java.io.ByteArrayInputStream(sent));
        var out = Files.newOutputStream(crew)) {
      for (Row row : book.getSheet("start")) {
        String key = row.getCell(0) == null ? "" : row.getCell(0).toString();
        if (key.equals("by") || key.equals("on")) {
          row.getCell(1).setCellValue(key.equals("by") ? "IC" : "2027-06-01");
        }
      }
      Sheet deck = book.getSheet("Crew A");
      Cell finding = with(deck, "finding");
      deck.getRow(with(deck, "A-1-2").getRowIndex())
          .getCell(finding.getColumnIndex())
          .setCellValue("rot");
      Row log = book.getSheet("log").getRow(4);
      List<String> task = List.of("2027-06-01", "sheet");
      IntStream.range(0, 2).forEach(i -> log.getCell(i).setCellValue(task.get(i)));
      log.getCell(2).setCellValue(2);
      log.getCell(3).setCellValue(1.5);
      book.write(out);
    }
  }

  private static Cell with(Sheet sheet, String text) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.toString().equals(text)) {
          return cell;
        }
      }
    }
    throw new UncheckedIOException(new IOException("no cell says " + text));
  }

  private static void done(Object... command) {
    Sent.done(command);
  }
}

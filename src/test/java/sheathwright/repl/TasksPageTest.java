package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.repl.SessionPage.Exchange;
import sheathwright.repl.line.ExportedClass;

/**
 * The page of tasks: each typed in a session of its own and answered as the page says, exported as
 * Java that compiles, and its numbers worked out once more without the library.
 */
class TasksPageTest {

  private static final int TASKS = 12;
  private static final int CLIPS = 8;
  private static final int STRINGS = 9;
  private static final int BIDS = 11;
  private static final int SAVED = 12;

  @TempDir Path folder;

  private static SessionPage task(int number) throws IOException {
    return SessionPage.of("tasks.md").sections().get(number - 1);
  }

  /** Answers as the page says, and what {@code show java} says as the methods of a class. */
  @Test
  void everyTask_isAnsweredAsThePageSays_andItsJavaCompiles() throws Exception {
    SessionPage page = SessionPage.of("tasks.md");
    List<String> answered = new ArrayList<>();
    StringBuilder source = new StringBuilder();
    Set<String> imports = new LinkedHashSet<>(List.of(Vocabulary.AMOUNTS));
    imports.addAll(new Vocabulary().rest());
    imports.forEach(each -> source.append("import ").append(each).append(";\n"));
    source.append("public class Exported {\n");
    int number = 0;
    for (SessionPage task : page.sections()) {
      source.append("  static void task").append(++number).append("() {\n");
      Set<String> declared = new HashSet<>();
      try (Session session = new Session()) {
        for (Exchange exchange : task.exchanges()) {
          answered.add(exchange.answered(session, folder));
          if (CommandWords.in(exchange.typed(), name -> false).isEmpty()) {
            source.append(statements(EstimatorGuideTest.answer(session, "show java"), declared));
          }
        }
      }
      source.append("  }\n");
    }
    assertThat(page.sections()).hasSize(TASKS);
    assertThat(page.tooWide()).isEmpty();
    assertThat(answered)
        .containsExactlyElementsOf(page.exchanges().stream().map(Exchange::shown).toList());
    ExportedClass.compiled(folder, source.append("}\n").toString());
  }

  /** Lines of Java as statements: a second value of a name is no second declaration. */
  private static String statements(String java, Set<String> declared) {
    StringBuilder statements = new StringBuilder();
    for (String line : java.lines().toList()) {
      String name = line.replaceFirst("^var (\\w+) = .*", "$1");
      boolean isAgain = !name.equals(line) && !declared.add(name);
      statements.append("    ").append(isAgain ? line.replaceFirst("^var ", "") : line);
    }
    String whole = statements.toString().strip();
    return whole.endsWith(";") || whole.endsWith("}") ? whole + "\n" : whole + ";\n";
  }

  @Test
  void theNumbers_areThoseWorkedOutByHand() throws IOException {
    double plan = 50 * 32 + 22 * 8 - 3 * 3;
    says(1, "area()    %,.2f sq ft", plan * 13 / 12);
    assertThat(4 * 16 * Math.sqrt(2 + 25 / 144.0)).isCloseTo(94 + 4.25 / 12, within(1 / 192.0));
    says(1, "hip()     94' 4-1/4\"");
    double fewest = Math.ceil(plan * 13 / 12 / 32);
    assertThat(66.0).isGreaterThanOrEqualTo(fewest);
    says(2, "nails = %d nails/sheet", 2 * (48 / 6 + 1) + 3 * (48 / 12 + 1));
    assertThat(144 * Math.sqrt(1 - 0.375 / 1.375) + 2 * 24).isGreaterThan(144);
    says(3, "nails()      %d nails", 2 * ((int) Math.ceil((144 - 4) / 12.0) + 1) * 6);
    double bending = 80 * 11.5 * 11.5 * 12 / 8 / (1.5 * 5.5 * 5.5 / 6);
    says(4, "%,.1f psi of %,.1f psi, NOT ok", bending, 875 * 1.3 * 1.15 * 1.15);
    says(5, "exact()   $%.2f", extra(0.9));
    says(5, "quoted()  $%.0f.00", Math.ceil(extra(0.9)));
    says(6, "area()      %d sq ft", 4 * 4 + 4 * 4 + 4 * 2);
    says(7, "for $%.2f", 7 * 10.90 + 7.35);
    assertThat(Math.ceil(23 * 10.90 / 3 * 100) / 100).isEqualTo(83.57);
  }

  @Test
  void theClips_areThoseWorkedOutByHand() throws IOException {
    double height = 1.21 + (1.29 - 1.21) * (18 - 15) / (20 - 15); // exposure C, printed
    double pull = 0.6 * 0.00256 * 0.70059 * height * 0.85 * 130 * 130 * (2.0 + 0.18);
    double screw = 2850 * 0.25 * 0.19 * 0.4375 * 1.6;
    says(CLIPS, "uplift()  %.2f psf", pull);
    says(CLIPS, "screw = %.1f lb", screw);
    double apart = 2 * screw / (pull / 144 * 16);
    assertThat(Math.floor(apart * 16) / 16).isEqualTo(40 + 3.0 / 16);
    says(CLIPS, "spacing = 40-3/16 in, rounded down");
  }

  @Test
  void theStringLines_spansBidsAndSheets_areThoseWorkedOutByHand() throws IOException {
    double[] sixteenths = {2, 4, 6, 4, 8, 14, 10, 10, 18, 12, 10, 16, 10, 6, 12, 8, 4, 6, 4, 2, 2};
    double all = 0;
    for (double drop : sixteenths) {
      all += drop / 16;
    }
    assertThat(all).isEqualTo(10.5);
    says(STRINGS, "build-up total 10-1/2\n    in, largest 1-1/8 in");
    says(STRINGS, "for $%.2f", 3 * 10.90 + 8.60);
    double[] bending = {875, 850, 900};
    String[] spans = {"spruce-pine-fir  ", "hem-fir  ", "douglas-fir-larch  "};
    for (int i = 0; i < bending.length; i++) {
      double allowed = bending[i] * 1.2 * 1.15 * 1.15;
      double modulus = 1.5 * 7.25 * 7.25 / 6;
      long inches = Math.round(Math.sqrt(8 * allowed * modulus / (80.0 / 12)));
      says(10, spans[i] + inches / 12 + "-" + inches % 12);
    }
    for (int sheets = 3; sheets <= 7; sheets++) {
      says(BIDS, "$%,.2f  $117.00", 10_420 + 165 + sheets * Math.ceil(extra(0.55)));
    }
    double deck = 2 * 42 * (16 + 9.25 / 12);
    says(SAVED, "order = %.0f sheets", Math.ceil(deck * 1.10 / 32));
    says(SAVED, "order = %.0f sheets (was", Math.ceil(deck * 1.15 / 32));
    double least = Math.ceil((59 * 32 / deck - 1) * 10_000) / 100;
    double most = Math.floor((60 * 32 / deck - 1) * 10_000) / 100;
    says(SAVED, "the same from %.2f %% to %.2f %%", least, most);
    says(SAVED, "51 sheets  %.0f sheets", Math.ceil(deck * 1.08 / 32));
  }

  /** What a sheet sells for that takes so many hours, before it is rounded up. */
  private static double extra(double hours) {
    double material = (38.50 * 1.05 + 43 * 0.02) * 1.065;
    return (material + hours * 46 + 45 * 78 / 2000.0) * 1.18 / 0.88;
  }

  private static void says(int task, String format, Object... numbers) throws IOException {
    assertThat(task(task).text()).contains(String.format(Locale.ROOT, format, numbers));
  }

  @Test
  void theScript_overFiveJobs_saysWhatThePageSays() throws IOException {
    String console = task(BIDS).block("console");
    String[] typed = console.lines().findFirst().orElseThrow().split(" ");
    Path script = Files.writeString(folder.resolve(typed[3]), task(BIDS).block("script"));
    List<String> jobs = new ArrayList<>();
    for (int i = 4; i < typed.length; i++) {
      jobs.add(job(typed[i], i - 1).toString());
    }
    PrintStream before = System.out;
    java.io.ByteArrayOutputStream printed = new java.io.ByteArrayOutputStream();
    StringWriter err = new StringWriter();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    int status;
    try {
      PrintWriter out = new PrintWriter(System.out, true);
      status = Script.run(script, jobs, out, new PrintWriter(err, true));
    } finally {
      System.setOut(before);
    }
    assertThat(err.toString()).isEmpty();
    assertThat(status).isZero();
    assertThat(printed.toString(StandardCharsets.UTF_8).replace(folder + "/", "").lines())
        .containsExactlyElementsOf(console.lines().skip(1).toList());
  }

  /** The job of the demo with so many sheets in its price, in a folder of its own. */
  private Path job(String name, int sheets) throws IOException {
    Path job = Files.createDirectories(folder.resolve(name));
    Path demo = Path.of("demo-data", "quince-hollow");
    for (String table : List.of("job.csv", "planes.csv", "prices.csv", "rates.csv")) {
      String text = Files.readString(demo.resolve(table));
      Files.writeString(
          job.resolve(table), text.replace("planned_sheets,3,", "planned_sheets," + sheets + ","));
    }
    return job;
  }

  @Test
  void theSavedWorkbook_isWorkedOutAgain() throws IOException {
    try (Session session = new Session()) {
      task(SAVED).exchanges().stream()
          .limit(4)
          .forEach(exchange -> exchange.answered(session, folder));
    }
    try (InputStream in = Files.newInputStream(folder.resolve("order.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      FormulaEvaluator engine = book.getCreationHelper().createFormulaEvaluator();
      cell(book, "waste").setCellValue(15);
      engine.clearAllCachedResultValues();
      assertThat(engine.evaluate(cell(book, "order")).getNumberValue()).isEqualTo(51);
    }
  }

  private static XSSFCell cell(XSSFWorkbook book, String name) {
    CellReference at = new CellReference(book.getName(name).getRefersToFormula());
    return book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }
}

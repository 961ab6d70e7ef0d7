package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.RowSource;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.home.HomeBook;
import sheathwright.workbook.letterhead.LetterKind;
import sheathwright.workbook.letterhead.OfficeLetterhead;
import sheathwright.workbook.letterhead.PlainLetterhead;
import sheathwright.workbook.letterhead.Told;
import sheathwright.workbook.page.Samples;
import sheathwright.workbook.paper.LifeBooks;
import sheathwright.workbook.paper.LifeJob;

/**
 * Each price and rate of a job is made odd and unlike every other number in it; then no part of the
 * homeowner's file may hold any of them, or its name, or where it was read.
 */
class HomeownerSecretsTest {

  /** Odd parts of a unit, so that no count or length of a demo job has them. */
  private static final double ODD = 0.00713;

  private static final List<String> SAID =
      List.of(".csv", "from memory", "from_memory", "second hand", "secondary source", "no source");

  static List<String> jobs() {
    return Samples.JOBS;
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void rule27_noPart_holdsAPriceOrARate_norItsName(String job) throws IOException {
    Map<String, String> odd = new LinkedHashMap<>();
    Map<String, RowSource> files = odd(Samples.tables(job).files(), odd);

    holdsNone(everything(HomeBook.of(new Estimate(Job.of(new JobTables(files)))).bytes()), odd);
  }

  @Test
  void rule27_noDocumentOfAJobsLife_holdsAPriceOrARate_norItsName() throws IOException {
    Map<String, String> odd = new LinkedHashMap<>();
    Map<String, RowSource> open = odd(LifeJob.tables(Map.of()), odd);
    Map<String, RowSource> closed = odd(LifeJob.tables(LifeJob.CLOSED), new LinkedHashMap<>());

    for (byte[] book : LifeBooks.all(open, closed).values()) {
      String everything = everything(book);
      holdsNone(everything, odd);
      for (String said : SAID) {
        assertThat(everything.contains(said)).as(said).isFalse();
      }
      for (String said : List.of("overhead", "margin", "wage", "labor")) {
        assertThat(everything.replaceAll("pagemargins?", "").contains(said)).as(said).isFalse();
      }
    }
  }

  @Test
  void noFilledLetterhead_holdsAPriceOrARate_norItsName() throws IOException {
    Map<String, String> odd = new LinkedHashMap<>();
    Job job = Job.of(new JobTables(odd(Samples.tables("quince-hollow").files(), odd)));
    byte[] letterhead = PlainLetterhead.bytes(LetterKind.QUOTE);
    byte[] filled =
        new OfficeLetterhead(LetterKind.QUOTE, "plain.xlsx", letterhead)
            .filled(HomeBook.of(new Estimate(job)).bytes(), Told.ofDraft(job), () -> null);

    holdsNone(everything(filled), odd);
  }

  private static void holdsNone(String everything, Map<String, String> odd) {
    assertThat(odd).hasSizeGreaterThan(11);
    odd.forEach(
        (name, value) -> {
          assertThat(everything.contains(value)).as("the value of " + name).isFalse();
          assertThat(isNamed(everything, name)).as("the name " + name).isFalse();
        });
  }

  /** The count of sheets by area has a waste of its own, which is 0 and no rate of anybody's. */
  private static boolean isNamed(String everything, String name) {
    return !name.equals("waste_pct")
        && Pattern.compile("(?<![a-z_])" + name).matcher(everything).find();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noPart_tellsHowASourceWasHad(String job) throws IOException {
    String everything = everything(HomeBook.of(new Estimate(Job.of(Samples.tables(job)))).bytes());

    assertThat(everything.contains("what you pay")).isTrue();
    for (String said : SAID) {
      assertThat(everything.contains(said)).as(said).isFalse();
    }
  }

  @Test
  void aPageThatTriedToShowACost_isRefused() {
    Job job = Job.of(Samples.tables("quince-hollow"));
    Traced cost = job.labeledPrices().get("Sheet");
    Book book = new Book(Audience.homeowner(job), Particulars.of("A page of the future", ""));
    Tab tab = book.tab("A page of the future", 20, 20, 20, 20, 20, 20);
    Figure<?> made = ((Figure<?>) cost).times((Figure<?>) cost);
    tab.entry("Looks harmless", made, "");

    assertThatIllegalStateException()
        .isThrownBy(() -> book.finished(book.tab("Working", 9, 9, 9, 9, 9, 9, 9), tab))
        .withMessageContaining("not to know");
  }

  /** The job's tables, each price and rate by a little more, and what each is now. */
  private static Map<String, RowSource> odd(
      Map<String, RowSource> tables, Map<String, String> odd) {
    Map<String, RowSource> files = new LinkedHashMap<>(tables);
    for (String table : List.of("prices", "rates")) {
      RowSource file = files.get(table);
      for (RowSource.Line line : new ArrayList<>(file.lines())) {
        String name = line.cells().get(0);
        if (Set.of("nails_per_box", "refasten_nails").contains(name)) {
          continue; // whole, and in the office's book alone
        }
        double value = Double.parseDouble(line.cells().get(1)) + ODD * (1 + odd.size() * 0.0137);
        String text = String.format(Locale.ROOT, "%.7f", value);
        odd.put(table.equals("prices") ? "price_" + name + "_usd" : name, text);
        file = Perturbed.with(file, line.number(), 1, text);
      }
      files.put(table, file);
    }
    return files;
  }

  private static String everything(byte[] file) throws IOException {
    StringBuilder all = new StringBuilder();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        all.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return all.toString().toLowerCase(Locale.ROOT);
  }
}

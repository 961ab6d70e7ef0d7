package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.job.table.JobText;

/**
 * No job says of its rafters what its tables do not show: read again from the tables' own text,
 * line by line, apart from everything that reads them to answer.
 */
class SoundnessTest {

  private static final List<String> SOUND =
      List.of("within the screening limits", "within the screening limits only as assumed");

  private static final String LOOKED = "report,seen,where\nF-1,nothing,from the attic\n";

  /** Without these nobody may say anything; what they may not be is in the second half. */
  private static final List<String> NEEDED =
      List.of("rafter_size_known", "span_known", "bearing_known", "ties_known");

  private static final List<String> ALL =
      List.of(
          "species_known",
          "grade_known",
          "rafter_size_known",
          "span_known",
          "bearing_known",
          "notch_known",
          "moisture_known",
          "rafter_stock_known",
          "ties_known");

  static Stream<String> jobs() {
    return Stream.of(new java.io.File("demo-data").listFiles(java.io.File::isDirectory))
        .filter(job -> new java.io.File(job, JobTable.JOB.file()).exists())
        .map(java.io.File::getName)
        .sorted();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noDemoJob_saysMoreThanItsTablesShow(String name) {
    assertSaysNoMore(name, JobText.demo(name));
  }

  /** The job that is sound, with one thing after another taken away or said to be unknown. */
  @ParameterizedTest
  @MethodSource("spoiled")
  void noScenario_saysMoreThanItsTablesShow(String what, JobText job) {
    assertSaysNoMore(what, job);
  }

  static Stream<org.junit.jupiter.params.provider.Arguments> spoiled() {
    List<org.junit.jupiter.params.provider.Arguments> all = new ArrayList<>();
    for (String base : List.of("quince-hollow", "tallow-end")) {
      JobText sound = JobText.demo(base);
      for (String key : ALL) {
        String line = lineOf(sound, key);
        for (String how : List.of("unknown", "assumed", "")) {
          String other = how.isEmpty() ? "" : key + "," + how + ",\n";
          add(all, base + ", " + key + " " + how, sound.with("job", line + "\n", other));
        }
      }
      for (String seen : List.of("split", "truss", "cut", "bearing-rot", "spread-wall")) {
        add(all, base + ", " + seen, sound.with("reports", "F-1,nothing", "F-1," + seen));
      }
      add(all, base + ", nobody looked", without(sound, "reports"));
    }
    add(all, "rafters that nobody told of", JobText.small().withTable("reports", LOOKED));
    add(all, "a deck alone", JobText.small());
    return all.stream();
  }

  /**
   * Where one group alone was sold, unknown wood is of that one, and still no-3 without a stamp.
   */
  @Test
  void aRegionOfOneSpecies_namesWhatNobodyCanName() {
    JobText unknown =
        JobText.demo("quince-hollow")
            .with("job", "species_known,stamped", "species_known,unknown")
            .with("job", "grade_known,stamped", "grade_known,unknown");
    assertThat(taken(unknown)).containsExactly("unknown", "unknown");
    assertThat(taken(unknown.withLines("job", "region_species,hem-fir,")))
        .containsExactly("hem-fir", "unknown");
  }

  private static List<String> taken(JobText text) {
    KnownRafters known = new KnownRafters(text.job());
    return List.of(known.species.plain(), known.grade.plain());
  }

  /** All of it known and looked at: only then may the crew repair, and the quote be signed. */
  @Test
  void aJobWhoseTablesShowIt_isSound() {
    Framing framing = framing(JobText.demo("quince-hollow"));
    assertThat(framing.mayRepair().plain()).isEqualTo("yes");
    assertThat(framing.holding().plain()).isEqualTo("holds");
    assertThat(framing.mayBeSigned().holds()).isTrue();
  }

  @Test
  void whatWasTold_wasToldBySomebody() {
    JobText told =
        JobText.demo("quince-hollow").with("job", "span_known,measured", "span_known,told");
    assertThat(told.problems())
        .singleElement()
        .asString()
        .contains("span_known: told is given; say by whom in a line told_by, or give unknown");
    assertThat(told.withLines("job", "told_by,the owner,").problems()).isEmpty();
  }

  /** Sisters beside sound rafters are no better known than that they bear at both ends. */
  @Test
  void sisters_areSoundOnlyWhereSomebodySawThemBear() {
    JobText asked =
        JobText.demo("quince-hollow")
            .withLines(
                "job",
                "sister_species,spruce-pine-fir,",
                "sister_grade,no-2,",
                "existing_psf,3,",
                "jacked,no,")
            .withTable("lumber", "size,length_ft,usd\n2x4,16,8\n2x6,16,12\n2x8,16,17\n");
    assertThat(beside(asked)).isEqualTo("not inspected: nobody may say");
    assertThat(beside(asked.withLines("job", "sister_bears_known,assumed,")))
        .endsWith("only as assumed: look first");
    JobText seen = asked.withLines("job", "sister_bears_known,measured,");
    assertThat(beside(seen)).isEqualTo("within the screening limits");
    assertThat(beside(seen.with("job", "span_known,measured", "span_known,unknown")))
        .isEqualTo("not inspected: nobody may say");
  }

  private static String beside(JobText job) {
    return framing(job).besideSisters().orElseThrow().plain();
  }

  private static void assertSaysNoMore(String what, JobText job) {
    Framing framing = framing(job);
    String decision = framing.decision().plain();
    boolean isLookedAt = job.tables().containsKey("reports");
    boolean isKnown = isLookedAt && NEEDED.stream().noneMatch(key -> isOneOf(job, key, "unknown"));
    boolean isSure = isKnown && ALL.stream().noneMatch(key -> isOneOf(job, key, "assumed"));
    if (!isKnown) {
      assertThat(SOUND).as(what).noneMatch(decision::startsWith);
      assertThat(framing.holding().plain()).as(what).isEqualTo("not looked at");
    }
    if (!isSure) {
      assertThat(decision).as(what).isNotEqualTo(SOUND.get(0));
      assertThat(framing.holding().plain()).as(what).isNotEqualTo("holds");
    }
    if (!isSure || !decision.equals(SOUND.get(0))) {
      assertThat(framing.mayRepair().plain()).as(what).isEqualTo("no");
    }
    if (!isLookedAt || decision.startsWith("STOP")) {
      assertThat(framing.mayBeSigned().holds()).as(what).isFalse();
    }
    if (isLookedAt && !job.tables().get("reports").contains(",nothing,")) {
      assertThat(decision).as(what).startsWith("STOP");
    }
  }

  /** Whether a key says this, or says nothing where that means unknown. */
  private static boolean isOneOf(JobText job, String key, String how) {
    return job.tables()
        .get("job")
        .lines()
        .filter(line -> line.startsWith(key + ","))
        .map(line -> line.split(",", -1)[1].toLowerCase(Locale.ROOT))
        .findFirst()
        .orElse("unknown")
        .equals(how);
  }

  private static String lineOf(JobText job, String key) {
    return job.tables()
        .get("job")
        .lines()
        .filter(line -> line.startsWith(key + ","))
        .findFirst()
        .orElseThrow();
  }

  private static JobText without(JobText job, String table) {
    var rest = new java.util.LinkedHashMap<>(job.tables());
    rest.remove(table);
    return new JobText(rest);
  }

  private static void add(
      List<org.junit.jupiter.params.provider.Arguments> all, String what, JobText job) {
    all.add(org.junit.jupiter.params.provider.Arguments.of(what, job));
  }

  private static Framing framing(JobText job) {
    return new Estimate(job.job()).framing();
  }
}

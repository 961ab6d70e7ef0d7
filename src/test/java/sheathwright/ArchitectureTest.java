package sheathwright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The rooms of the house, and which door leads where. */
class ArchitectureTest {

  private static final Path SOURCES =
      Path.of(System.getProperty("basedir", ""), "src", "main", "java");

  /** What every room of the trade may import. */
  private static final List<String> NOUNS =
      List.of("figure", "catalog", "published", "wood", "loads", "roof");

  /** Every room with the rooms that it may import, sub-rooms included. */
  private static final Map<String, List<String>> ROOMS =
      Map.ofEntries(
          room("figure"),
          room("catalog", "figure"),
          room("published", "figure"),
          room("wood", "figure", "catalog", "published"),
          room("roof", "figure", "catalog"),
          room("loads", "figure", "catalog", "published", "wood", "roof"),
          room("cutting"),
          trade("sheathing", "cutting"),
          trade("fastening"),
          trade("framing"),
          trade("leveling", "cutting"),
          room("pricing", "figure", "catalog"),
          room("forecast", "figure", "catalog"),
          room("job", all()),
          room("life", all("job")),
          room("proof", all("job")),
          room("workbook", all("job", "life", "proof")),
          room("repl", all("job", "life", "proof", "workbook")),
          room("cli", all("job", "life", "proof", "workbook", "repl")));

  /** The corners of rooms, each with the corners of its own room that it may import. */
  private static final Map<String, List<String>> CORNERS =
      Map.ofEntries(
          room("loads.wind", "loads"),
          room("loads.snow", "loads"),
          room("cutting.program", "cutting"),
          room("cutting.stick", "cutting", "cutting.program"),
          room("cutting.sheet", "cutting", "cutting.program"),
          room("sheathing.panel"),
          room("sheathing.board"),
          room("sheathing.layout"),
          room("sheathing.place", "sheathing.layout"),
          room("sheathing.patch", "sheathing.layout", "sheathing.place"),
          room("sheathing.triage", "sheathing.patch"),
          room("fastening.strength"),
          room("fastening.count"),
          room("fastening.schedule", "fastening.strength"),
          room("fastening.uplift"),
          room("framing.stop"),
          room("framing.rafter", "framing.stop"),
          room("framing.sister", "framing.stop", "framing.rafter"),
          room("framing.nailed", "framing.stop", "framing.rafter", "framing.sister"),
          room("leveling.string"),
          room("leveling.target", "leveling.string"),
          room("leveling.plan", "leveling.string", "leveling.target"),
          room("job.table"),
          room("job.file", "job.table"),
          room("job.tab", "job.file", "job.table"),
          room("job.fill", "job.table"),
          room("job.cell", "job.fill", "job.table"),
          room("job.site", "job.table"),
          room("job.price", "job.table"),
          room("job.zone", "job.table"),
          room("job.life", "job.table", "job.zone"),
          room("job.office", "job.table"),
          room("job.path", "job.site", "job.table"),
          room("job.solve", "job.life", "job.table", "job.zone"),
          room("job.season", "job", "job.life", "job.office", "job.table"),
          room("job.triage", "job.life", "job.site", "job.table", "job.zone"),
          room("life.found"),
          room("life.supply", "life.found"),
          room("life.doubt", "life.found"),
          room("life.bill", "life.found"),
          room("life.unseen", "life.bill", "life.found"),
          room("life.record", "life.found", "life.bill"),
          room("life.firm", "life.bill", "life.found", "life.record", "life.supply", "life.unseen"),
          room("life.back", "life.record"),
          room("life.start", "life.record"),
          room("repl.line"),
          room("repl.memory"),
          room("workbook.file"),
          room("workbook.part", "workbook.file"),
          room("workbook.book", "workbook.file", "workbook.part"),
          room("workbook.draw", "workbook.part", "workbook.book"),
          room("workbook.told", "workbook.part", "workbook.book", "workbook.draw"),
          room("workbook.home", "workbook.file", "workbook.book", "workbook.draw", "workbook.told"),
          room(
              "workbook.page",
              "workbook.file",
              "workbook.book",
              "workbook.draw",
              "workbook.home",
              "workbook.told"),
          room(
              "workbook.paper",
              "workbook.file",
              "workbook.book",
              "workbook.draw",
              "workbook.page",
              "workbook.told"),
          room("workbook.own", "workbook.file", "workbook.book", "workbook.page"),
          room("workbook.firm", "workbook.file", "workbook.book", "workbook.draw", "workbook.page"),
          room("workbook.audit", "workbook.file", "workbook.book", "workbook.page"),
          room("workbook.calculator", "workbook.file", "workbook.book", "workbook.page"),
          room(
              "workbook.proof",
              "workbook.file",
              "workbook.book",
              "workbook.page",
              "workbook.calculator",
              "workbook.audit"),
          room(
              "workbook.letterhead",
              "workbook.file",
              "workbook.part",
              "workbook.audit",
              "workbook.draw",
              "workbook.paper",
              "workbook.told"),
          room("cli.pipe"),
          room("repl.shell"),
          room("repl.show"),
          room("repl.tab", "repl.line"),
          room("repl.whatif", "repl.line", "repl.memory", "repl.show"),
          room("cli.firm", "cli.pipe"),
          room("cli.proof", "cli.pipe"));

  /** More files than this in one folder are not seen whole. */
  private static final int MOST_FILES = 35;

  private static Map.Entry<String, List<String>> trade(String name, String... further) {
    return Map.entry(name, Stream.concat(NOUNS.stream(), Stream.of(further)).toList());
  }

  private static final Set<String> BEFORE_JOB =
      ROOMS.keySet().stream()
          .filter(room -> !Set.of("job", "life", "proof", "workbook", "repl", "cli").contains(room))
          .collect(Collectors.toCollection(TreeSet::new));

  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("sheathwright");

  private static Map.Entry<String, List<String>> room(String name, String... imports) {
    return Map.entry(name, List.of(imports));
  }

  /** The rooms before {@code job}, and these. */
  private static String[] all(String... further) {
    List<String> before =
        List.of("cutting", "sheathing", "fastening", "framing", "leveling", "pricing", "forecast");
    return Stream.of(NOUNS.stream(), before.stream(), Stream.of(further))
        .flatMap(each -> each)
        .toArray(String[]::new);
  }

  private static String inside(String room) {
    return "sheathwright." + room + "..";
  }

  static Stream<Arguments> rooms() {
    return ROOMS.entrySet().stream().map(room -> Arguments.of(room.getKey(), room.getValue()));
  }

  @ParameterizedTest(name = "{0} may import {1}")
  @MethodSource("rooms")
  void room_importsOnlyTheRoomsThatItMay(String room, List<String> imports) {
    String[] allowed =
        Stream.concat(Stream.of(room), imports.stream())
            .map(ArchitectureTest::inside)
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage(inside(room))
        .should()
        .dependOnClassesThat(
            resideInAPackage("sheathwright..").and(not(resideInAnyPackage(allowed))))
        .allowEmptyShould(true) // a room may not be built yet
        .check(MAIN);
  }

  static Stream<Arguments> corners() {
    return CORNERS.entrySet().stream()
        .map(corner -> Arguments.of(corner.getKey(), corner.getValue()));
  }

  @ParameterizedTest(name = "{0} may import {1} of its room")
  @MethodSource("corners")
  void corner_importsOnlyTheCornersThatItMay(String corner, List<String> imports) {
    String room = corner.substring(0, corner.indexOf('.'));
    String[] allowed =
        Stream.concat(Stream.of(corner), imports.stream())
            .map(each -> "sheathwright." + each)
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage("sheathwright." + corner)
        .should()
        .dependOnClassesThat(resideInAPackage(inside(room)).and(not(resideInAnyPackage(allowed))))
        .check(MAIN);
  }

  @Test
  void everyCorner_isNamed() {
    assertThat(
            MAIN.stream()
                .map(type -> type.getPackageName().substring("sheathwright.".length()))
                .filter(name -> name.contains(".")))
        .isSubsetOf(CORNERS.keySet());
  }

  @Test
  void everyClass_standsInARoom() {
    classes()
        .should()
        .resideInAnyPackage(
            ROOMS.keySet().stream().map(ArchitectureTest::inside).toArray(String[]::new))
        .check(MAIN);
  }

  @ParameterizedTest(name = "only {0} imports {1}")
  @CsvSource({
    "workbook, org.apache.poi..",
    "repl,     jdk.jshell..",
    "repl,     org.jline..",
    "repl,     org.objectweb.asm..",
    "cli,      picocli..",
    "roof,     org.locationtech..",
    "leveling, org.ojalgo..",
    "forecast, org.apache.commons.math3..",
  })
  void library_isImportedByOneRoom(String room, String library) {
    noClasses()
        .that()
        .resideOutsideOfPackage(inside(room))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(MAIN);
  }

  @Test
  void figure_needsNothingButTheJdk() {
    classes()
        .that()
        .resideInAPackage(inside("figure"))
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("java..", inside("figure"))
        .check(MAIN);
  }

  @Test
  void cutting_needsNothingButTheJdk() {
    classes()
        .that()
        .resideInAPackage(inside("cutting"))
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("java..", inside("cutting"))
        .check(MAIN);
  }

  @Test
  void rooms_formNoCycle() {
    slices().matching("sheathwright.(*)..").should().beFreeOfCycles().check(MAIN);
  }

  @Test
  void corners_formNoCycle() {
    slices().matching("sheathwright.(**)").should().beFreeOfCycles().check(MAIN);
  }

  @Test
  void roomsBeforeJob_haveNoClockLocaleNetworkConsoleOrChance() {
    noClasses()
        .that()
        .resideInAnyPackage(
            BEFORE_JOB.stream().map(ArchitectureTest::inside).toArray(String[]::new))
        .should()
        .accessTargetWhere(
            target(
                called("a clock", ArchitectureTest::isClock)
                    .or(called("the default locale", ArchitectureTest::isDefaultLocale))
                    .or(called("the console", ArchitectureTest::isConsole))
                    .or(called("chance", ArchitectureTest::isChance))
                    .or(called("the network", ArchitectureTest::isNetwork))))
        .check(MAIN);
  }

  private static DescribedPredicate<AccessTarget> called(
      String what, Predicate<AccessTarget> predicate) {
    return describe(what, predicate);
  }

  private static boolean isClock(AccessTarget target) {
    String owner = target.getOwner().getName();
    return owner.startsWith("java.time.") && target.getName().equals("now")
        || owner.equals("java.time.Clock")
        || owner.equals("java.lang.System")
            && Set.of("currentTimeMillis", "nanoTime").contains(target.getName())
        || target.getFullName().equals("java.util.Date.<init>()");
  }

  private static boolean isDefaultLocale(AccessTarget target) {
    return target.getFullName().equals("java.util.Locale.getDefault()")
        || target.getFullName().equals("java.lang.String.toLowerCase()")
        || target.getFullName().equals("java.lang.String.toUpperCase()")
        || target.getFullName().equals("java.text.DecimalFormat.<init>(java.lang.String)")
        || target.getFullName().equals("java.text.DecimalFormatSymbols.getInstance()");
  }

  private static boolean isConsole(AccessTarget target) {
    return target.getOwner().getName().equals("java.lang.System")
        && Set.of("out", "err", "in", "console").contains(target.getName());
  }

  private static boolean isChance(AccessTarget target) {
    return target.getFullName().equals("java.util.Random.<init>()")
        || target.getFullName().equals("java.lang.Math.random()")
        || target.getOwner().getName().equals("java.util.concurrent.ThreadLocalRandom")
        || target.getOwner().getName().equals("java.security.SecureRandom")
        || target.getFullName().equals("java.util.UUID.randomUUID()");
  }

  private static boolean isNetwork(AccessTarget target) {
    String owner = target.getOwner().getName().toLowerCase(Locale.ROOT);
    return owner.startsWith("java.net.") && !owner.equals("java.net.uri");
  }

  static Stream<Path> packages() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .map(Path::getParent)
          .collect(Collectors.toCollection(TreeSet::new))
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("packages")
  void everyFolder_isSeenWhole(Path room) throws IOException {
    try (Stream<Path> files = Files.list(room)) {
      assertThat(files.filter(file -> file.toString().endsWith(".java")))
          .hasSizeLessThanOrEqualTo(MOST_FILES);
    }
  }

  @ParameterizedTest
  @MethodSource("packages")
  void everyRoom_saysWhatItIsFor(Path room) throws IOException {
    Path file = room.resolve("package-info.java");
    assertThat(file).exists();
    assertThat(Files.readString(file))
        .matches("(?s)/\\*\\*\\s+\\*\\s+\\S.{40,}?\\*/\\s*package sheathwright\\.[a-z.]+;\\s*");
  }
}

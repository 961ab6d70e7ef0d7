package sheathwright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Reading;

/** Who solves reads through a {@link Reading} and nowhere else, so that no input is forgotten. */
class RecordedReadingTest {

  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .withImportOption(place -> !place.contains("/test/"))
          .importPackages("sheathwright");

  /** A value taken from a figure, a word or a condition beside any reading. */
  private static final DescribedPredicate<AccessTarget> VALUE =
      describe(
          "a value read without a reading",
          access ->
              Set.of("value", "holds", "plain").contains(access.getName())
                  && Set.of(
                          Figure.class.getName(), Choice.class.getName(), Condition.class.getName())
                      .contains(access.getOwner().getName()));

  private static final DescribedPredicate<JavaClass> SOLVES =
      describe("make a solution of a reading", type -> calls(type, "solution"));

  /** What a solution is made of: the classes that read for one, and those that they hand it to. */
  private static final DescribedPredicate<JavaClass> READS =
      describe(
          "read for a solution",
          type ->
              !type.getPackageName().startsWith("sheathwright.figure")
                  && (calls(type, "solution") || calls(type, "number") || calls(type, "word")));

  private static boolean calls(JavaClass type, String method) {
    return type.getMethodCallsFromSelf().stream()
        .anyMatch(
            call ->
                call.getTargetOwner().isEquivalentTo(Reading.class)
                    && call.getName().equals(method));
  }

  @Test
  void whoReadsForASolution_readsNothingBesideIt() {
    noClasses().that(READS).should().accessTargetWhere(target(VALUE)).check(MAIN);
  }

  @Test
  void whoSolves_handsNoPlainValueOnThatWasReadAside() {
    noClasses()
        .that(SOLVES)
        .and()
        .doNotHaveSimpleName("Plane") // refuses an area before it is read
        .and()
        .doNotHaveSimpleName("StringReadings") // refuses two centers of one rafter
        .should()
        .accessTargetWhere(
            target(
                describe(
                    "a look aside",
                    access ->
                        access.getOwner().isEquivalentTo(Reading.class)
                            && access.getName().equals("aside"))))
        .check(MAIN);
  }
}

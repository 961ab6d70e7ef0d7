package sheathwright.workbook.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.job.table.CsvFile;
import sheathwright.proof.OfficeCases;
import sheathwright.proof.Tested;
import sheathwright.workbook.audit.Recomputed;

/** What a verification finds, and that what is wrong makes it fail. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class VerificationTest {

  private Verification all;

  @BeforeAll
  void verify() {
    all = Verification.of(List.of(), told -> {});
  }

  private Verification with(List<Tested> tested, List<Control> controls, List<OfficeCases> own) {
    return new Verification(all.prints(), tested, all.books(), all.plan(), controls, own);
  }

  @Test
  void everythingHolds() {
    assertThat(all.holds()).isTrue();
    assertThat(all.tested()).extracting(Tested::card).isEqualTo(Catalog.shipped().cards());
    assertThat(all.books())
        .extracting(Recomputed::name)
        .containsExactly("estimate.xlsx", "quote.xlsx", "calculators.xlsx");
    assertThat(all.books()).allSatisfy(book -> assertThat(book.formulas()).isPositive());
  }

  @Test
  void everyWrittenFile_isCurrent() throws IOException {
    for (var file : WrittenEvidence.all(all.tested()).entrySet()) {
      assertThat(Files.readString(file.getKey()))
          .as(file.getKey() + " is out of date; run src/build/verification.sh")
          .isEqualTo(file.getValue());
    }
  }

  @Test
  void thePlan_isProvenFromItsCertificate() {
    assertThat(all.plan().holds()).isTrue();
    assertThat(all.plan().isProven()).isTrue();
  }

  @Test
  void whatWasPlanted_isFound() {
    assertThat(all.controls()).hasSize(2).allMatch(Control::isFound);
  }

  @Test
  void aPlantedValueThatIsNotFound_fails() {
    List<Control> blind = List.of(new Control("a value that nobody looks at", false));
    assertThat(with(all.tested(), blind, List.of()).holds()).isFalse();
  }

  @Test
  void aCaseOfTheOfficesThatDoesNotHold_fails() {
    String headings = "function,source,tolerance,rise_in_12,slope_factor\n";
    OfficeCases right =
        OfficeCases.of(CsvFile.parse("mine.csv", headings + "slope_factor,hand,1e-9,9,1.25\n"));
    OfficeCases wrong =
        OfficeCases.of(CsvFile.parse("mine.csv", headings + "slope_factor,hand,1e-9,9,1.3\n"));
    assertThat(with(all.tested(), all.controls(), List.of(right)).holds()).isTrue();
    assertThat(with(all.tested(), all.controls(), List.of(right, wrong)).holds()).isFalse();
  }

  @Test
  void aCaseOfOursThatDoesNotHold_fails() {
    Card card = Catalog.shipped().named("slope_factor");
    Tested wrong =
        OfficeCases.of(
                CsvFile.parse(
                    "slope_factor.csv", "source,tolerance,rise_in_12,slope_factor\nhand,0,9,1.3\n"))
            .tested()
            .get(0);
    List<Tested> spoiled = new ArrayList<>(all.tested());
    spoiled.replaceAll(each -> each.card().equals(card) ? wrong : each);
    Verification found = with(spoiled, all.controls(), List.of());
    assertThat(found.holds()).isFalse();
    assertThat(found.worst().map(Tested::card)).contains(card);
  }
}

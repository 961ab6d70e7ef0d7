package sheathwright.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Source;
import sheathwright.figure.Table;

/** Wood that nobody knows is the least of what the tables print, picked out by hand. */
class LeastWoodTest {

  /**
   * NDS 2018 Tables 4A and 4B, no-3, by hand. Bending with the size inside: spruce-pine-fir-south
   * 450 × C_F (1.5, 1.3, 1.2, 1.1, 1.0) or southern pine 650, 575, 525, 475, 450, whichever is
   * less; everything else is least in spruce-pine-fir-south. 1997: southern pine is as today, 575,
   * and all others 500 × 1.3.
   */
  @ParameterizedTest
  @CsvSource({
    "nds2018, unknown, SIZE_2X4, 650, 135, 335, 1000000",
    "nds2018, unknown, SIZE_2X6, 575, 135, 335, 1000000",
    "nds2018, unknown, SIZE_2X12, 450, 135, 335, 1000000",
    "nds2018, no-2, SIZE_2X6, 1000, 135, 335, 1100000",
    "nds1997, unknown, SIZE_2X6, 575, 135, 405, 1200000",
    "southern-pine-2012, unknown, SIZE_2X6, 750, 175, 565, 1400000"
  })
  void nobodyKnowsTheSpecies(
      String set, String grade, LumberSize size, double fb, double fv, double fcp, double e) {
    LumberValues values = values(Species.UNKNOWN_SPECIES, grade(grade), size, set(set));
    assertThat(values.bending().value() * values.sizeFactor().value()).isCloseTo(fb, within(1e-9));
    assertThat(values.shear().value()).isEqualTo(fv);
    assertThat(values.bearing().value()).isEqualTo(fcp);
    assertThat(values.modulus().value()).isEqualTo(e);
  }

  @Test
  void aGradeThatNobodyKnows_isNo3() {
    LumberValues unknown =
        values(Species.HEM_FIR, Grade.UNKNOWN_GRADE, LumberSize.SIZE_2X8, ValueSet.NDS2018);
    assertThat(unknown.bending().value()).isEqualTo(500);
    assertThat(unknown.sizeFactor().value()).isEqualTo(1.2);
    assertThat(unknown.modulus().value()).isEqualTo(1_200_000);
  }

  /** Only Douglas fir is held as construction and standard: that says nothing of other groups. */
  @Test
  void aGradeThatNotEveryGroupIsHeldIn_isRefusedForTheUnknownOne() {
    LumberValues values =
        values(Species.UNKNOWN_SPECIES, Grade.CONSTRUCTION, LumberSize.SIZE_2X4, ValueSet.NDS2018);
    assertThat(values.bending().refusal()).isPresent();
  }

  /** NDS 2018 Table 12.3.3A: spruce-pine-fir-south, western cedars and western woods. */
  @Test
  void gravityThatNobodyKnows_isTheLeastListed() {
    Figure<?> gravity = WoodGravity.woodGravity(Species.UNKNOWN_SPECIES);
    assertThat(gravity.value()).isEqualTo(0.36);
  }

  private static Table table(List<String> keys, List<String> columns, List<List<String>> rows) {
    return new Table("t", "a table", keys, columns, rows, Source.derived("nothing"), List.of("n"));
  }

  /** A small table by hand: of each column the least, plainly written. */
  @Test
  void theLeastOfEachColumn_isAddedForTheUnknownSpecies() {
    Table least =
        LeastWood.ofSpecies(
            table(
                List.of("species"),
                List.of("a", "b"),
                List.of(List.of("hem", "2", "10.50"), List.of("pine", "1", "1200"))));
    assertThat(least.rows())
        .containsExactly(
            List.of("hem", "2", "10.50"),
            List.of("pine", "1", "1200"),
            List.of("unknown", "1", "10.5"));
    assertThat(least.notes()).hasSize(2).first().isEqualTo("n");
    assertThat(least.columns()).containsExactly("a", "b");
  }

  private static final Table FACTORS =
      table(
          List.of("grade", "size"),
          List.of("hem", "pine"),
          List.of(
              List.of("no-3", "2x4", "1.5", "1"),
              List.of("no-3", "2x6", "1.3", "1"),
              List.of("no-1", "2x4", "1.5", "1"),
              List.of("standard", "2x4", "1", "1"),
              List.of("standard", "2x6", "1", "1")));

  /** The unknown species has its size inside its values, and the unknown grade is no-3. */
  @Test
  void sizeFactors_areOneForTheUnknownSpecies() {
    Table sizes = LeastWood.ofSizes(FACTORS);
    assertThat(sizes.columns()).containsExactly("hem", "pine", "unknown");
    assertThat(sizes.rows())
        .hasSize(7)
        .contains(
            List.of("no-3", "2x4", "1.5", "1", "1"),
            List.of("no-1", "2x4", "1.5", "1", "1"),
            List.of("unknown", "2x4", "1.5", "1", "1"),
            List.of("unknown", "2x6", "1.3", "1", "1"));
  }

  /**
   * By hand: no-3 of 2x4 is 500 × 1.5 or 650, of 2x6 500 × 1.3 or 575. Standard is held in one
   * group only, and no-1 has no factor for the 2x6: neither says anything of unknown wood.
   */
  @Test
  void lumber_getsTheLeastWithItsSizeInside() {
    List<List<String>> printed =
        List.of(
            List.of("s", "hem", "no-3", "500", "500", "1200000"),
            List.of("s", "pine", "no-3", "650", "575", "1400000"),
            List.of("s", "hem", "no-1", "900", "900", "1500000"),
            List.of("s", "pine", "no-1", "1500", "1350", "1600000"),
            List.of("s", "hem", "standard", "300", "300", "1000000"),
            List.of("old", "cedar", "no-9", "800", "700", "1700000"));
    Table lumber =
        LeastWood.ofLumber(
            table(
                List.of("value_set", "species", "grade"), List.of("2x4", "2x6", "e_psi"), printed),
            List.of("2x4", "2x6"),
            FACTORS);
    List<List<String>> rows = new ArrayList<>(printed);
    rows.add(List.of("s", "unknown", "no-3", "650", "575", "1200000"));
    rows.add(List.of("s", "hem", "unknown", "500", "500", "1200000"));
    rows.add(List.of("s", "pine", "unknown", "650", "575", "1400000"));
    rows.add(List.of("s", "unknown", "unknown", "650", "575", "1200000"));
    assertThat(lumber.rows()).containsExactlyElementsOf(rows);
  }

  private static LumberValues values(Species species, Grade grade, LumberSize size, ValueSet set) {
    return new LumberValues(Lumber.of(species, grade, size, set));
  }

  private static Grade grade(String word) {
    return java.util.Arrays.stream(Grade.values())
        .filter(each -> each.word().equals(word))
        .findFirst()
        .orElseThrow();
  }

  private static ValueSet set(String word) {
    return java.util.Arrays.stream(ValueSet.values())
        .filter(each -> each.word().equals(word))
        .findFirst()
        .orElseThrow();
  }
}

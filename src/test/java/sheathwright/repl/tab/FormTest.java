package sheathwright.repl.tab;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Catalog;

/** A form asks for what is due, keeps what stands there, and ends as a call that can be typed. */
class FormTest {

  private final List<String> asked = new ArrayList<>();
  private final List<String> said = new ArrayList<>();

  private Optional<String> filled(Map<String, String> given, String... lines) {
    Iterator<String> typed = List.of(lines).iterator();
    return new Form(Catalog.shipped().named("nails_per_sheet"), given)
        .filled(
            question -> {
              asked.add(question);
              return typed.hasNext() ? Optional.of(typed.next()) : Optional.empty();
            },
            said::add);
  }

  @Test
  void valuesAndKeptOnes_becomeTheNamedCall() {
    assertThat(filled(Map.of("support_spacing_in", "24"), "", "6 in", "12", "", "", ""))
        .contains(
            "nailsPerSheet(support_spacing_in = 24 in, edge_spacing_in = 6 in, field_spacing_in = 12 in)");
  }

  @Test
  void eachLine_tellsUnitRangeChoicesAndWhatStandsThere() {
    filled(Map.of("support_spacing_in", "24"), "", "6", "12", "yes", "", "");
    assertThat(asked.get(0))
        .isEqualTo(
            "support_spacing_in: center to center of the rafters or trusses, 6 in to 96 in [24]: ");
    assertThat(asked.get(3)).contains("(yes, no) [no]: ");
  }

  @Test
  void aWrongValue_isRefusedAndAskedForAgain() {
    assertThat(filled(Map.of(), "16", "0", "abc", "6", "12", "maybe", "YES", "", ""))
        .contains(
            "nailsPerSheet(support_spacing_in = 16 in, edge_spacing_in = 6 in, field_spacing_in = 12 in, blocked_edges = YES)");
    assertThat(said.get(1)).contains("edge_spacing_in is 0; it must be from 1 to 24");
    assertThat(said.get(2)).contains("edge_spacing_in").contains("abc");
    assertThat(said.get(3)).contains("blocked_edges is \"maybe\"; it must be one of");
  }

  @Test
  void nothingWhereSomethingIsDue_leaves() {
    assertThat(filled(Map.of(), "16", "")).isEmpty();
    assertThat(filled(Map.of())).isEmpty();
  }
}

package sheathwright.repl.tab;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Catalog;
import sheathwright.repl.line.Questions;
import sheathwright.repl.line.Standing;

/** A form asks for what is due, keeps what stands there, and ends as a call that can be typed. */
class FormTest {

  private final List<String> asked = new ArrayList<>();
  private final List<String> said = new ArrayList<>();

  private Optional<String> filled(
      String function, Map<String, Object> variables, int columns, String... lines) {
    Iterator<String> typed = List.of(lines).iterator();
    Questions questions = new Questions(Catalog.shipped().named(function), new Standing(variables));
    return new Form(questions, columns)
        .filled(
            question -> {
              asked.add(question);
              return typed.hasNext() ? Optional.of(typed.next()) : Optional.empty();
            },
            said::add);
  }

  private Optional<String> nails(Map<String, Object> variables, String... lines) {
    return filled("nails_per_sheet", variables, 120, lines);
  }

  @Test
  void whatIsTyped_becomesTheNamedCall_andWhatIsKeptIsLeftToTheCall() {
    assertThat(nails(Map.of("given_spacing", in(24)), "", "6 in", "12", "", "", ""))
        .contains("nailsPerSheet(edge_spacing = 6 in, field_spacing = 12 in)");
  }

  @Test
  void aValueIsSaidAsInACall_aVariableOrASumToo() {
    assertThat(nails(Map.of("gap", in(8)), "1' 4\"", "gap - 2 in", "gap + 4 in", "Yes", "", ""))
        .contains(
            "nailsPerSheet(spacing = 1' 4\", edge_spacing = gap - 2 in, field_spacing = gap + 4 in, blocked_edges = Yes)");
  }

  @Test
  void eachLine_tellsUnitRangeChoicesAndWhatStandsThere() {
    nails(Map.of("given_spacing", in(24)), "", "6", "12", "yes", "", "");
    assertThat(asked.get(0))
        .isEqualTo(
            "spacing: center to center of the rafters or trusses, 6 in to 96 in [24 in, given]: ");
    assertThat(asked.get(3)).contains("(yes, no) [no]: ");
  }

  @Test
  void inANarrowWindow_noLineIsWiderThanIt() {
    filled("rafter_check", Map.of(), 80, "SPF", "#2", "2x6", "16");
    assertThat(asked).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(64));
    assertThat(said.stream().skip(2).flatMap(String::lines))
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void aWrongValue_isRefusedAndAskedForAgain() {
    assertThat(nails(Map.of(), "16", "0", "abc", "6", "12", "maybe", "YES", "", ""))
        .contains(
            "nailsPerSheet(spacing = 16 in, edge_spacing = 6 in, field_spacing = 12 in, blocked_edges = YES)");
    assertThat(said.get(2)).contains("edge_spacing_in is 0; it must be from 1 to 24");
    assertThat(said.get(3)).contains("edge spacing").contains("abc");
    assertThat(said.get(4))
        .contains("blocked edges is \"maybe\", which is not defined; it must be one of");
  }

  @Test
  void nothingWhereSomethingIsDue_leaves() {
    assertThat(nails(Map.of(), "16", "")).isEmpty();
    assertThat(nails(Map.of())).isEmpty();
  }
}

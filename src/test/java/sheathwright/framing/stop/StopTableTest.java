package sheathwright.framing.stop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Table;

/** The one table of what stops is whole, honest, and fit for each of its readers. */
class StopTableTest {

  /** A sentence longer than this is read by nobody on a roof. */
  private static final int LONGEST = 200;

  @ParameterizedTest
  @EnumSource(StopFinding.class)
  void eachFinding_isSaidToEachReader(StopFinding finding) {
    List<String> sentences =
        Stream.of(
                StopTable.toCrew(finding),
                StopTable.toInspector(finding),
                StopTable.toHomeowner(finding),
                StopTable.meanwhile(finding))
            .map(Choice::plain)
            .toList();
    assertThat(sentences).allSatisfy(text -> assertThat(text).isNotBlank());
    assertThat(sentences).allSatisfy(text -> assertThat(text.length()).isLessThan(LONGEST));
    assertThat(sentences.subList(0, 3)).allSatisfy(text -> assertThat(text).endsWith("."));
  }

  /** A source that nobody read in this project says so, as every other one does. */
  @ParameterizedTest
  @EnumSource(StopFinding.class)
  void eachSource_isMarked(StopFinding finding) {
    assertThat(StopTable.sourceOf(finding).plain())
        .containsAnyOf("from memory", "secondary source", "common practice, no source", "ratio");
  }

  @Test
  void theTable_holdsTheFindingsAndNoOther() {
    List<String> words = Arrays.stream(StopFinding.values()).map(StopFinding::word).toList();
    Stream.concat(StopTable.forTheTrade().stream(), StopTable.forTheHomeowner().stream())
        .forEach(
            table ->
                assertThat(table.rows().stream().map(row -> row.get(0)).toList())
                    .as(table.title())
                    .containsExactlyElementsOf(words));
  }

  @Test
  void aHomeowner_isNotToldHowASourceWasHad() {
    List<String> cells =
        StopTable.forTheHomeowner().stream()
            .map(Table::rows)
            .flatMap(List::stream)
            .flatMap(List::stream)
            .toList();
    assertThat(cells)
        .allSatisfy(
            cell -> assertThat(cell).doesNotContain("from memory", "no source", "IRC", "CFR"));
  }

  @Test
  void whatFollowsFromNoLine_isRefusedWithTheLinesThatThereAre() {
    Choice<String> none =
        StopTable.forTheTrade().get(0).words("decides", Choice.literal("woodworm"));
    assertThat(none.refusal().orElseThrow().reason()).contains("woodworm", "live-wires");
  }
}

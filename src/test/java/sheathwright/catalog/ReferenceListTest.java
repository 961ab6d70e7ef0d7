package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Functions in a line each, written out by hand. */
class ReferenceListTest {

  private static final List<Card> CARDS = List.of(MadeCards.strip(), MadeCards.price());

  @Test
  void list_hasNamesInOneColumnAndSentencesInAnother() {
    assertThat(Reference.list(CARDS))
        .isEqualTo(
            """
            strip_nails  Nails along one strip.
            price        What a nail costs.""");
  }

  /** Names as they are typed; the sentence goes on under itself at the 26th place. */
  @Test
  void list_ofAWidthGoesOnUnderTheSentence() {
    assertThat(Reference.list(CARDS, 26))
        .isEqualTo(
            """
            nailsPerSheet   Nails
                            along one
                            strip.
            sheetUnitPrice  What a
                            nail
                            costs.""");
  }

  @Test
  void list_ofNothingIsEmpty() {
    assertThat(Reference.list(List.of())).isEmpty();
    assertThat(Reference.list(List.of(), 80)).isEmpty();
  }

  @Test
  void rooms_standInTheOrderOfTheWork() {
    assertThat(Reference.rooms().keySet())
        .containsExactly(
            "roof",
            "loads",
            "wood",
            "framing",
            "sheathing",
            "fastening",
            "leveling",
            "forecast",
            "pricing");
    assertThat(Reference.rooms()).containsEntry("fastening", "Nails and screws");
  }

  @Test
  void rooms_cannotBeChanged() {
    Map<String, String> rooms = Reference.rooms();
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> rooms.put("attic", "What lies under it"));
  }
}

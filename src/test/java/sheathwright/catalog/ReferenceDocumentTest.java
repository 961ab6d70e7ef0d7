package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The handbook of two functions, written out by hand: every room has its chapter. */
class ReferenceDocumentTest {

  private static final String HEAD =
      """
      # Functions, a handbook

      This page is written by `./sheathwright functions --markdown` from the doc comments; a test fails when it is out of date. Every example in it is run by the tests. Results are planning help: local code and licensed practice decide.

      - The roof as geometry:\s
      - What lies and pulls on it:\s
      - What its lumber can carry:\s
      - Rafters and their sisters:\s
      - Panels and boards of the deck:\s
      - Nails and screws: [strip_nails](#strip_nails), [strip_nails](#strip_nails)
      - From the string line to straight rafters:\s
      - What nobody has seen:\s
      - What it costs: [price](#price)

      ## The roof as geometry

      ## What lies and pulls on it

      ## What its lumber can carry

      ## Rafters and their sisters

      ## Panels and boards of the deck

      ## Nails and screws

      """;

  private static final String STRIP =
      """
      ### strip_nails

      Nails along one strip.

      ```text
      nails = strip ÷ spacing
      spare = strip − nails × spacing
      ```

      Does not cover strips that bend.

      Count the first nail too.

      | parameter | what it is | if left out |
      | --- | --- | --- |
      | `strip_in` | the strip \\| its length, to 96 in |  |
      | `wood` | below it (soft, hard-maple) | `soft` |

      Gives `nails`, `spare_in`: the nails, and what is left.

      Refuses if the strip is longer than 96 in.

      ```java
      nailsPerSheet(in(24)) // 4
      nailsPerSheet(in(96)) // 16
      ```

      Source: common practice, no source.

      """;

  private static final String TAIL =
      """
      ## From the string line to straight rafters

      ## What nobody has seen

      ## What it costs

      ### price

      What a nail costs.

      ```text
      nail = box ÷ count
      ```

      Does not cover bent nails.

      | parameter | what it is | if left out |
      | --- | --- | --- |
      | `box_usd` | one box |  |

      Gives `nail_usd`: the price.

      Refuses if the box is empty.

      ```java
      sheetUnitPrice(usd(9)) // 1
      ```

      Source: derived.
      """;

  @Test
  void document_hasEachFunctionInItsRoom() {
    List<Card> cards = List.of(MadeCards.strip(), MadeCards.price(), MadeCards.strip());
    assertThat(Reference.document(cards)).isEqualTo(HEAD + STRIP + STRIP + TAIL);
  }
}

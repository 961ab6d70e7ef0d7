package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A function's page in the terminal, written out by hand. */
class ReferencePageTest {

  @Test
  void page_saysEverythingOfAFunction() {
    assertThat(Reference.page(MadeCards.strip(), 80))
        .isEqualTo(
            """
            strip_nails
              Nails along one strip.

                nails = strip ÷ spacing
                spare = strip − nails × spacing

              Does not cover strips that bend.
              Count the first nail too.

            takes
              strip_in  the strip | its length, to 96 in
              wood      below it (soft, hard-maple) [soft if left out]
            gives
              nails, spare_in: the nails, and what is left
            refuses
              if the strip is longer than 96 in
            example
              nailsPerSheet(in(24)) // 4
              nailsPerSheet(in(96)) // 16
            source
              common practice, no source""");
  }

  @Test
  void page_leavesOutNotesThatNobodyWrote() {
    assertThat(Reference.page(MadeCards.price(), 80))
        .isEqualTo(
            """
            price
              What a nail costs.

                nail = box ÷ count

              Does not cover bent nails.

            takes
              box_usd  one box
            gives
              nail_usd: the price
            refuses
              if the box is empty
            example
              sheetUnitPrice(usd(9)) // 1
            source
              derived""");
  }

  @Test
  void page_goesOnWhereTheTextBegan() {
    assertThat(Reference.page(MadeCards.strip(), 24))
        .isEqualTo(
            """
            strip_nails
              Nails along one strip.

                nails = strip ÷
                        spacing
                spare = strip −
                        nails ×
                        spacing

              Does not cover strips
              that bend.
              Count the first nail
              too.

            takes
              strip_in  the strip |
                        its length,
                        to 96 in
              wood      below it
                        (soft,
                        hard-maple)
                        [soft if
                        left out]
            gives
              nails, spare_in: the
              nails, and what is
              left
            refuses
              if the strip is longer
              than 96 in
            example
              nailsPerSheet(in(24))
              // 4
              nailsPerSheet(in(96))
              // 16
            source
              common practice, no
              source""");
  }
}

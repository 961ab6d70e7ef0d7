package sheathwright.life.bill;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Word;
import sheathwright.job.life.Item;

/** What a row of the table of what was agreed is about, besides the price of an item. */
enum AgreedPart implements Word {
  /** A line of the quote: {@code line-1}. */
  LINE(true),
  /** An option that the owner chose: {@code option-1}. */
  OPTION(true),
  /** A payment: {@code stage-1}. */
  STAGE(true),
  /** What everything agreed comes to. */
  TOTAL(false),
  /** Beyond how many sheets both sides talk again. */
  REOPEN(false),
  /** What needs no further yes. */
  PRE_AGREED(false);

  private final boolean isNumbered;

  AgreedPart(boolean isNumbered) {
    this.isNumbered = isNumbered;
  }

  /** As a row names it. */
  String row(int number) {
    return word() + (isNumbered ? "-" + number : "");
  }

  private boolean isNamed(String text) {
    return isNumbered ? text.matches(word() + "-[1-9][0-9]{0,4}") : text.equals(word());
  }

  /** What a row's first cell names, if it is none of the items. */
  static Optional<AgreedPart> of(String text) {
    return Arrays.stream(values()).filter(part -> part.isNamed(text)).findFirst();
  }

  /** Everything that a row may be about, in words. */
  static List<String> allowed() {
    return Stream.concat(
            Arrays.stream(Item.values()).map(Item::word),
            Arrays.stream(values()).map(part -> part.row(1)))
        .toList();
  }
}

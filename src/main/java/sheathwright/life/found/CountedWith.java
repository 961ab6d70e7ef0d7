package sheathwright.life.found;

import sheathwright.figure.Choice;

/**
 * The reason of a mark as it follows its cells, and behind it with which other mark it is counted,
 * as it was when it was counted.
 */
final class CountedWith {

  private CountedWith() {}

  /**
   * Both in one sentence.
   *
   * @param counted the reason when it was counted, with what stood behind it
   * @param now the reason alone, as it follows its cells
   */
  static Choice<String> reason(String counted, Choice<String> now) {
    int alone = now.value().length();
    return counted.length() > alone
        ? Choice.sentence(now, Choice.literal(counted.substring(alone)))
        : now;
  }
}

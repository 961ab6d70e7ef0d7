package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * What is read under a string, before it means anything.
 *
 * @param reading string to wood
 * @param block height of the two blocks under the string
 * @param stringSag how far the string itself hangs at that place
 */
public record RawReading(
    @Column(value = "reading_in", least = 0, most = 24, rule = "from string to wood")
        Figure<Length> reading,
    @Column(value = "block_in", preset = "3/4", least = 0, most = 12, rule = "3/4 is usual")
        Figure<Length> block,
    @Column(
            value = "string_sag_in",
            preset = "0",
            least = 0,
            most = 3,
            rule = "pull a slack string tighter")
        Figure<Length> stringSag) {

  private static final Columns COLUMNS = Columns.of(RawReading.class);

  public RawReading {
    reading = COLUMNS.let("reading", reading);
    block = COLUMNS.let("block", block);
    stringSag = COLUMNS.let("stringSag", stringSag);
  }

  /** A reading under a string that does not hang, over usual blocks unless they are said. */
  public static RawReading of(Figure<Length> stringToWood) {
    return new RawReading(stringToWood, null, null);
  }

  public RawReading block(Figure<Length> height) {
    return new RawReading(reading, height, stringSag);
  }

  public RawReading stringSag(Figure<Length> there) {
    return new RawReading(reading, block, there);
  }

  /** The height of blocks, whatever is read between them. */
  static Figure<Length> ofBlocks(Figure<Length> height) {
    return COLUMNS.let("block", height);
  }
}

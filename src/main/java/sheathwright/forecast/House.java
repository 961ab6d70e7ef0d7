package sheathwright.forecast;

/**
 * A finished house: plain numbers of the firm's history.
 *
 * @param sheets of its deck, 1 or more
 * @param bad of them, at most as many
 */
public record House(int sheets, int bad) {

  public House {
    if (sheets < 1 || bad < 0 || bad > sheets) {
      throw new IllegalArgumentException("no house has %s of %s bad".formatted(bad, sheets));
    }
  }
}

package sheathwright.figure;

import java.util.List;
import java.util.function.Consumer;

/** What the guard of a solution would call each input that a thing hands to a reading. */
public final class Labels {

  private Labels() {}

  public static List<String> of(Consumer<Reading> handedOn) {
    Reading reading = new Reading();
    handedOn.accept(reading);
    return reading.solution("anything").asSolved().cellsOf("input").stream()
        .map(Traced::plain)
        .toList();
  }
}

package sheathwright.roof;

import java.util.List;
import java.util.function.Consumer;
import sheathwright.figure.Reading;
import sheathwright.figure.Traced;

/** What the guard of a solution would call each input that a thing hands to a reading. */
final class Labels {

  private Labels() {}

  static List<String> of(Consumer<Reading> handedOn) {
    Reading reading = new Reading();
    handedOn.accept(reading);
    return reading.solution("anything").asSolved().cellsOf("input").stream()
        .map(Traced::plain)
        .toList();
  }
}

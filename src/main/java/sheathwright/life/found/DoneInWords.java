package sheathwright.life.found;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.job.Deck;
import sheathwright.job.life.Cause;
import sheathwright.job.life.MarkFields;
import sheathwright.job.life.MarkFields.Decided;

/** What is done about a mark, and what else has to be, for whoever lives below it. */
public final class DoneInWords {

  private DoneInWords() {}

  /** What is done, in a sentence. */
  static String done(Decided action) {
    return switch (action) {
      case REPLACE -> "We take this piece out and put in a new one.";
      case COVER -> "We cover the hole with sheet metal.";
      case SUPPORT -> "We put wood under it where it lies on nothing.";
      case RELIEVE -> "We saw the tight joint open and nail both sides again.";
      case REFASTEN -> "We nail it down again.";
      case DRY -> "It is too wet to cover: it dries first, and we measure again.";
      case LIFT -> "We lift it, straighten what is under it, and lay it again.";
      case WATCH -> "It stays as it is; find where the water came from, and look again.";
      case STOP -> "Nothing is done here before whoever must decide has decided.";
    };
  }

  /** What has to be put right by others, or it comes back; nothing where that is not so. */
  static Optional<String> unless(Cause cause) {
    return switch (cause) {
      case LEAK -> Optional.of("This comes back unless the leak above it is put right.");
      case FAN ->
          Optional.of(
              "This comes back unless the fan that blows into the attic is put right and blows outdoors.");
      case EAVE_ICE ->
          Optional.of(
              "This comes back unless what makes ice at the eave is put right: warm air that gets into the attic, and too little air from outdoors.");
      case CONDENSATION ->
          Optional.of(
              "This comes back unless the damp air of the house is kept out of the attic and that is put right.");
      case STORM, AGE, WORKMANSHIP, UNKNOWN -> Optional.empty();
    };
  }

  /** What is done about a mark, and what else has to be. */
  public static String done(Deck.Marked marked, Found found) {
    List<String> said = new ArrayList<>();
    said.add(
        found.isVoid()
            ? "Taken back: nothing is done."
            : done(Decided.valueOf(found.action().toUpperCase(java.util.Locale.ROOT))));
    if (marked.row().has(MarkFields.CAUSE) && !found.isVoid()) {
      unless(marked.row().of(MarkFields.CAUSE).value()).ifPresent(said::add);
    }
    return String.join(" ", said);
  }

  /** A mark in plain words: where, what was found, what is done, and what else has to be. */
  static String of(Deck.Marked marked, Found found) {
    return "%s, plane %s: %s. %s"
        .formatted(
            found.key(),
            marked.part().plane().name(),
            marked.mark().found().plain().replace('-', ' '),
            done(marked, found));
  }
}

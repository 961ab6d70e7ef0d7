package sheathwright.repl.whatif;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.repl.whatif.Sought.Tried;

/**
 * A search as it is told.
 *
 * @param typed how a value is given to what is sought
 */
record Finding(SeekCall call, Notches notches, Figure<?> target, String typed) {

  /** Characters: two fewer than the usual 80, as prose stands everywhere at the prompt. */
  private static final int WIDTH = 78;

  private static final String BELOW = "    ";

  /** What is said of what a search has come to. */
  String of(Sought sought) {
    if (sought instanceof Sought.Given given) {
      return given(given);
    }
    if (sought instanceof Sought.Jumped jumped) {
      return lines(
              "no %s makes %s %s; it steps over it"
                  .formatted(call.input(), call.asked(), target.shown()))
          + "\n"
          + tried(jumped.left())
          + "\n"
          + tried(jumped.right());
    }
    if (sought instanceof Sought.Nowhere nowhere) {
      return nowhere(nowhere);
    }
    Sought.Unanswered none = (Sought.Unanswered) sought;
    return lines(
        "%s has no value for any %s from %s to %s"
            .formatted(call.asked(), call.input(), typed(none.from()), typed(none.to())));
  }

  private String given(Sought.Given given) {
    String found = tried(given.found());
    if (!given.isStep()) {
      return found;
    }
    String range =
        given.least() == given.most()
            ? "no other " + call.input() + " gives it"
            : "the same from %s to %s".formatted(typed(given.least()), typed(given.most()));
    String neighbors =
        List.of(given.below(), given.above()).stream()
            .flatMap(Optional::stream)
            .map(each -> typed(each.value()) + " gives " + answer(each))
            .collect(joining(", "));
    return found + "\n" + lines("  " + range + "; " + neighbors);
  }

  private String nowhere(Sought.Nowhere nowhere) {
    if (answer(nowhere.least()).equals(answer(nowhere.most()))) {
      return lines(
          "%s stays %s for every %s from %s to %s"
              .formatted(
                  call.asked(),
                  answer(nowhere.least()),
                  call.input(),
                  typed(nowhere.from()),
                  typed(nowhere.to())));
    }
    return lines(
            "no %s from %s to %s makes %s %s; it reaches"
                .formatted(
                    call.input(),
                    typed(nowhere.from()),
                    typed(nowhere.to()),
                    call.asked(),
                    target.shown()))
        + "\n"
        + tried(nowhere.least())
        + "\n"
        + tried(nowhere.most());
  }

  private String tried(Tried one) {
    return typed.formatted(call.input(), typed(one.value()))
        + "\n  %s would be %s".formatted(call.asked(), answer(one));
  }

  private static String answer(Tried one) {
    return one.answer().map(Figure::shown).orElse("without a value");
  }

  private String typed(double value) {
    return notches.typed(value);
  }

  private static String lines(String text) {
    return String.join("\n", Shown.wrapped(text, WIDTH, "", BELOW));
  }
}

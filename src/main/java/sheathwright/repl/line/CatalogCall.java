package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Assumed;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.figure.OneOf;
import sheathwright.figure.Shown;
import sheathwright.repl.line.Reader.Around;

/**
 * One call of a library function: what it takes, what the job has given, what is assumed, and what
 * is missing.
 */
final class CatalogCall {

  private final Card card;
  private final ParameterNames names;
  private final Around around;
  private final Notes notes;
  private final Taken taken;

  CatalogCall(Card card, Around around, Arguments arguments, Notes notes) {
    this.card = card;
    this.names = ParameterNames.of(card);
    this.around = around;
    this.notes = notes;
    this.taken = new Taken(card, arguments);
  }

  /** How Java says the call; and, where every argument is known, what it answers. */
  Piece of(List<Tree.Argument> said, int at) {
    taken.takeAll(said);
    checkMissing(said, at);
    List<Piece> pieces = card.arguments().stream().map(this::made).toList();
    String java =
        card.method().getName() + pieces.stream().map(Piece::java).collect(joining(", ", "(", ")"));
    return Members.called(card.method(), null, java, pieces.stream().map(Piece::value).toArray());
  }

  /** Takes an argument for a parameter. */
  void give(Parameter parameter, Tree.Argument argument) {
    taken.give(parameter, argument);
  }

  private void checkMissing(List<Tree.Argument> said, int at) {
    List<Parameter> missing = new ArrayList<>();
    for (Argument argument : card.arguments()) {
      collectMissing(argument, missing);
    }
    if (!missing.isEmpty()) {
      throw new Unreadable(
          at,
          "%s still needs %s%s;%nfor instance %s"
              .formatted(
                  card.method().getName(),
                  missing.stream()
                      .map(each -> names.shortest(each) + " (" + Arguments.allowed(each) + ")")
                      .collect(joining(", ")),
                  missing.size() == 1 ? "" : "; each by its name",
                  completed(said, missing)));
    }
  }

  /** The call as it was typed, with what the function's own example takes for what is missing. */
  private String completed(List<Tree.Argument> said, List<Parameter> missing) {
    Sample sample = new Sample(card);
    Stream<String> typed =
        said.stream().map(each -> (each.isNamed() ? each.name() + " = " : "") + each.raw());
    Stream<String> further =
        missing.stream().map(each -> names.shortest(each) + " = " + sample.of(each));
    return Stream.concat(typed, further).collect(joining(", ", card.method().getName() + "(", ")"));
  }

  private void collectMissing(Argument argument, List<Parameter> missing) {
    if (taken.has(argument)) {
      return;
    }
    if (argument instanceof Argument.Thing thing) {
      thing.parts().forEach(part -> collectMissing(part, missing));
    } else {
      Parameter parameter = argument.parameters().get(0);
      if (leftOut(parameter).isEmpty()) {
        missing.add(parameter);
      }
    }
  }

  private Piece made(Argument argument) {
    if (taken.has(argument)) {
      return taken.piece(argument);
    }
    if (argument instanceof Argument.Thing thing) {
      List<Piece> parts = thing.parts().stream().map(this::made).toList();
      String java =
          "new %s(%s)"
              .formatted(
                  thing.type().getSimpleName(),
                  parts.stream().map(Piece::java).collect(joining(", ")));
      return Members.made(thing.type(), java, parts.stream().map(Piece::value).toArray());
    }
    Parameter parameter = argument.parameters().get(0);
    return leftOut(parameter).map(left -> noted(parameter, left)).orElseThrow();
  }

  /** What stands for a parameter that was left out, and whether the job has given it. */
  record Left(Piece piece, boolean isGiven) {

    @Override
    public String toString() {
      return shown(piece.value());
    }
  }

  private Piece noted(Parameter parameter, Left left) {
    String said = label(parameter) + " " + left;
    if (left.isGiven()) {
      notes.given(said);
    } else {
      notes.assumed(said);
    }
    return left.piece();
  }

  /** What stands for a parameter as long as it is left out. */
  Optional<Left> leftOut(Parameter parameter) {
    Optional<String> fact = Fact.of(card, parameter).map(Fact::variable).filter(around::has);
    if (fact.isPresent()) {
      return Optional.of(new Left(Piece.of(fact.get(), around.value(fact.get())), true));
    }
    String text = parameter.isRequired() ? assumed(parameter) : parameter.preset();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Left(Arguments.preset(parameter, text), false));
  }

  private String assumed(Parameter parameter) {
    for (boolean always : new boolean[] {false, true}) {
      for (Assumed assumed : parameter.assumed()) {
        if (assumed.where().isEmpty() == always && (always || isSaid(assumed))) {
          return assumed.value();
        }
      }
    }
    return "";
  }

  private boolean isSaid(Assumed assumed) {
    Parameter decides = card.parameter(assumed.where());
    Piece piece = decides == null ? null : taken.piece(new Argument.Plain(decides));
    Object value =
        piece != null
            ? piece.value()
            : decides == null
                ? null
                : Fact.of(card, decides)
                    .map(Fact::variable)
                    .filter(around::has)
                    .map(around::value)
                    .orElse(null);
    return value != null && shown(value).equals(assumed.is());
  }

  private static String shown(Object value) {
    return value instanceof OneOf<?> word ? word.choice().toString() : String.valueOf(value);
  }

  /** A parameter in words. */
  static String label(Parameter parameter) {
    return Shown.inWords(parameter.column());
  }
}

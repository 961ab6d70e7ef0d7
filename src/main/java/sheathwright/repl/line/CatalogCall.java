package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Assumed;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Shown;
import sheathwright.repl.line.Reader.Around;

/**
 * One call of a library function: which parameter each argument is for, what the job has given,
 * what is assumed, and what is missing.
 */
final class CatalogCall {

  private final Card card;
  private final ParameterNames names;
  private final Around around;
  private final Arguments arguments;
  private final Notes notes;
  private final Map<Parameter, Piece> given = new LinkedHashMap<>();
  private final Map<Argument, Piece> whole = new LinkedHashMap<>();

  CatalogCall(Card card, Around around, Arguments arguments, Notes notes) {
    this.card = card;
    this.names = ParameterNames.of(card);
    this.around = around;
    this.arguments = arguments;
    this.notes = notes;
  }

  /** How Java says the call; and, where every argument is known, what it answers. */
  Piece of(List<Tree.Argument> said, int at) {
    List<Tree.Argument> unnamed = takeNamed(said);
    checkNeighbors(unnamed);
    takeUnnamed(unnamed);
    checkMissing(said, at);
    List<Piece> pieces = card.arguments().stream().map(this::made).toList();
    String java =
        card.method().getName() + pieces.stream().map(Piece::java).collect(joining(", ", "(", ")"));
    return Members.called(card.method(), null, java, pieces.stream().map(Piece::value).toArray());
  }

  /** What a call gives for each argument, whatever it leaves out. */
  Map<Argument, Piece> taken(List<Tree.Argument> said) {
    takeUnnamed(takeNamed(said));
    Map<Argument, Piece> taken = new LinkedHashMap<>(whole);
    given.forEach((parameter, piece) -> taken.put(new Argument.Plain(parameter), piece));
    return taken;
  }

  /** Takes those with a name; the others. */
  private List<Tree.Argument> takeNamed(List<Tree.Argument> said) {
    List<Tree.Argument> unnamed = new ArrayList<>();
    for (Tree.Argument argument : said) {
      if (argument.isNamed()) {
        takeNamed(argument);
      } else if (given.isEmpty() && whole.isEmpty()) {
        unnamed.add(argument);
      } else {
        throw new Unreadable(
            argument.at(),
            "%s stands behind a named argument; name it as well: %s"
                .formatted(argument.raw(), String.join(", ", names.known())));
      }
    }
    return unnamed;
  }

  private void takeNamed(Tree.Argument argument) {
    Optional<ParameterNames.Which> which = names.which(argument.name());
    Optional<Parameter> parameter = names.parameter(argument.name());
    if (parameter.isEmpty() && which.isPresent()) {
      give(which.get().number(), argument);
      give(which.get().kind(), Trade.option(which.get().word()), argument);
      return;
    }
    Optional<Argument.Thing> thing = names.thing(argument.name());
    if (thing.isPresent()) {
      Piece piece =
          parameter.isEmpty() ? arguments.expression(argument) : arguments.tried(argument);
      if (piece != null && thing.get().type().isInstance(piece.value())
          || piece != null && !piece.isKnown() && parameter.isEmpty()) {
        take(thing.get(), piece, argument);
        return;
      }
    }
    give(parameter.orElseThrow(() -> names.unknown(argument.name(), argument.at())), argument);
  }

  /** Takes an argument for a parameter. */
  void give(Parameter parameter, Tree.Argument argument) {
    give(parameter, arguments.forParameter(parameter, label(parameter), argument), argument);
  }

  private void give(Parameter parameter, Piece piece, Tree.Argument argument) {
    if (given.putIfAbsent(parameter, piece) != null) {
      throw new Unreadable(argument.at(), label(parameter) + " is given twice");
    }
  }

  private void take(Argument thing, Piece piece, Tree.Argument argument) {
    if (whole.putIfAbsent(thing, piece) != null) {
      throw new Unreadable(argument.at(), thing.javaName() + " is given twice");
    }
  }

  /** Arguments without names stand in the function's order; a thing may be given part by part. */
  private void takeUnnamed(List<Tree.Argument> unnamed) {
    List<Argument> due = new ArrayList<>(card.arguments());
    due.removeIf(argument -> argument.parameters().stream().anyMatch(given::containsKey));
    due.removeAll(whole.keySet());
    if (due.isEmpty() && !unnamed.isEmpty()) {
      throw tooMany(unnamed.get(0));
    }
    int next = 0;
    for (Argument argument : due) {
      if (next == unnamed.size()) {
        return;
      }
      if (argument instanceof Argument.Thing thing) {
        Tree.Argument first = unnamed.get(next);
        Piece piece = arguments.tried(first);
        boolean isWhole =
            piece != null && (!piece.isKnown() || thing.type().isInstance(piece.value()));
        if (isWhole) {
          take(thing, piece, first);
          next++;
        } else {
          for (Parameter part : thing.parameters()) {
            if (next < unnamed.size()) {
              give(part, unnamed.get(next++));
            }
          }
        }
      } else {
        give(argument.parameters().get(0), unnamed.get(next++));
      }
    }
    if (next < unnamed.size()) {
      throw tooMany(unnamed.get(next));
    }
  }

  private Unreadable tooMany(Tree.Argument argument) {
    return new Unreadable(
        argument.at(),
        "%s is one argument too many; %s takes %s"
            .formatted(argument.raw(), card.method().getName(), String.join(", ", names.known())));
  }

  private void checkNeighbors(List<Tree.Argument> unnamed) {
    for (int i = 1; i < unnamed.size(); i++) {
      Piece left = arguments.tried(unnamed.get(i - 1));
      Piece right = arguments.tried(unnamed.get(i));
      if (left != null
          && right != null
          && left.value() instanceof Figure<?> one
          && right.value() instanceof Figure<?> other
          && one.unit().dimension().equals(other.unit().dimension())) {
        throw new Unreadable(
            unnamed.get(i).at(),
            "%s and %s are of one kind side by side; say which is which: %s"
                .formatted(unnamed.get(i - 1).raw(), unnamed.get(i).raw(), sketch(unnamed)));
      }
    }
  }

  /** The call with names before its arguments, in the function's order. */
  private String sketch(List<Tree.Argument> unnamed) {
    List<String> known = names.known();
    List<String> said = new ArrayList<>();
    for (int i = 0; i < Math.min(unnamed.size(), known.size()); i++) {
      said.add(known.get(i) + " = " + unnamed.get(i).raw());
    }
    return card.method().getName() + "(" + String.join(", ", said) + ")";
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
    if (whole.containsKey(argument)) {
      return;
    }
    if (argument instanceof Argument.Thing thing) {
      thing.parts().forEach(part -> collectMissing(part, missing));
    } else {
      Parameter parameter = argument.parameters().get(0);
      if (!given.containsKey(parameter) && leftOut(parameter).isEmpty()) {
        missing.add(parameter);
      }
    }
  }

  private Piece made(Argument argument) {
    if (whole.containsKey(argument)) {
      return whole.get(argument);
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
    return given.containsKey(parameter)
        ? given.get(parameter)
        : leftOut(parameter).map(left -> noted(parameter, left)).orElseThrow();
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
    Piece piece = decides == null ? null : given.get(decides);
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

  /** What an answer says beside its numbers: the facts that it took, and what it assumed. */
  static final class Notes {

    private static final int WIDTH = 78; // they stand two to the right, in 80

    private final Set<String> given = new LinkedHashSet<>();
    private final Set<String> assumed = new LinkedHashSet<>();

    void given(String fact) {
      given.add(fact);
    }

    void assumed(String preset) {
      assumed.add(preset);
    }

    List<String> lines() {
      List<String> lines = new ArrayList<>();
      add(lines, "given: ", given);
      add(lines, "assumed: ", assumed);
      return lines;
    }

    private static void add(List<String> lines, String what, Set<String> each) {
      if (!each.isEmpty()) {
        lines.addAll(Shown.wrapped(what + String.join(", ", each), WIDTH, "", "  "));
      }
    }
  }
}

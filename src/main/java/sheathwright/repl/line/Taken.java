package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Figure;

/**
 * What a call takes for the arguments of a library function: each that has a name by that name, the
 * others in the function's order, and a word that is out of place by the one parameter that has it.
 */
final class Taken {

  private final Card card;
  private final ParameterNames names;
  private final Arguments arguments;
  private final Map<Argument, Piece> pieces = new LinkedHashMap<>();

  Taken(Card card, Arguments arguments) {
    this.card = card;
    this.names = ParameterNames.of(card);
    this.arguments = arguments;
  }

  /** Takes all that stands in the brackets of a call. */
  void takeAll(List<Tree.Argument> said) {
    List<Tree.Argument> unnamed = unnamed(said);
    checkNeighbors(unnamed);
    takeUnnamed(unnamed);
  }

  /** Takes an argument for a parameter. */
  void give(Parameter parameter, Tree.Argument argument) {
    give(
        parameter,
        arguments.forParameter(parameter, CatalogCall.label(parameter), argument),
        argument);
  }

  boolean has(Argument argument) {
    return pieces.containsKey(argument);
  }

  private boolean has(Parameter parameter) {
    return has(new Argument.Plain(parameter));
  }

  /** What was taken for an argument; null if nothing was. */
  Piece piece(Argument argument) {
    return pieces.get(argument);
  }

  /** All that was taken. */
  Map<Argument, Piece> pieces() {
    return Collections.unmodifiableMap(pieces);
  }

  /** Takes those with a name; the others. */
  private List<Tree.Argument> unnamed(List<Tree.Argument> said) {
    List<Tree.Argument> unnamed = new ArrayList<>();
    for (Tree.Argument argument : said) {
      if (argument.isNamed()) {
        takeNamed(argument);
      } else if (pieces.isEmpty()) {
        unnamed.add(argument);
      } else {
        Parameter owner =
            owner(argument).orElseThrow(() -> mustBeNamed(argument, "a named argument"));
        give(owner, argument);
      }
    }
    return unnamed;
  }

  private Unreadable mustBeNamed(Tree.Argument argument, String before) {
    return new Unreadable(
        argument.at(),
        "%s stands behind %s; name it as well: %s"
            .formatted(argument.raw(), before, String.join(", ", names.known())));
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
        take(thing.get(), thing.get().javaName(), piece, argument);
        return;
      }
    }
    give(parameter.orElseThrow(() -> names.unknown(argument.name(), argument.at())), argument);
  }

  private void give(Parameter parameter, Piece piece, Tree.Argument argument) {
    take(new Argument.Plain(parameter), CatalogCall.label(parameter), piece, argument);
  }

  private void take(Argument due, String label, Piece piece, Tree.Argument argument) {
    if (pieces.putIfAbsent(due, piece) != null) {
      throw new Unreadable(argument.at(), label + " is given twice");
    }
  }

  /**
   * Arguments without names stand in the function's order; a thing may be given part by part. A
   * word that is not due at its place goes to the one parameter that has it, as if it were named.
   */
  private void takeUnnamed(List<Tree.Argument> unnamed) {
    Deque<Tree.Argument> left = new ArrayDeque<>(unnamed);
    List<Argument> due = new ArrayList<>(card.arguments());
    due.removeAll(pieces.keySet());
    for (Argument argument : due) {
      boolean isPartlyNamed = argument.parameters().stream().anyMatch(this::has);
      if (!isDoneWhole(argument, isPartlyNamed, left)) {
        argument.parameters().stream()
            .filter(part -> !has(part) && !left.isEmpty())
            .filter(part -> !isPartlyNamed || isDue(part, left.element()))
            .forEach(part -> takeNext(part, left));
      }
    }
    if (!left.isEmpty()) {
      takeWords(left);
    }
    if (!left.isEmpty()) {
      throw tooMany(left.element());
    }
  }

  /** Whether nothing is left to be taken for the parts of an argument one by one. */
  private boolean isDoneWhole(Argument argument, boolean isPartlyNamed, Deque<Tree.Argument> left) {
    Piece piece = left.isEmpty() ? null : arguments.tried(left.element());
    if (piece == null || !(argument instanceof Argument.Thing thing)) {
      return left.isEmpty();
    }
    if (isPartlyNamed) {
      return !piece.isKnown() || piece.value() instanceof Record;
    }
    boolean isWhole = !piece.isKnown() || thing.type().isInstance(piece.value());
    if (isWhole) {
      take(thing, thing.javaName(), piece, left.remove());
    }
    return isWhole;
  }

  /** Whether a part beside named ones is meant: it must be told, or it can be what stands next. */
  private boolean isDue(Parameter part, Tree.Argument next) {
    Piece piece = arguments.tried(next);
    boolean fits =
        takes(part, next)
            || piece != null
                && piece.value() instanceof Figure<?> figure
                && part.unit() != null
                && part.unit().dimension().equals(figure.unit().dimension());
    return fits || part.isRequired() && part.assumed().isEmpty();
  }

  /** Takes what stands next for a parameter, if it is meant for that one. */
  private void takeNext(Parameter part, Deque<Tree.Argument> left) {
    if (!takes(part, left.element())) {
      takeWords(left);
    }
    if (!left.isEmpty() && !has(part)) {
      give(part, left.remove());
    }
  }

  /** Takes the words that stand next, each for the one parameter that has it; then nothing more. */
  private void takeWords(Deque<Tree.Argument> left) {
    Tree.Argument first = left.element();
    Optional<Parameter> owner = owner(first);
    while (owner.isPresent()) {
      give(owner.get(), left.remove());
      owner = left.isEmpty() ? Optional.empty() : owner(left.element());
    }
    if (!left.isEmpty() && left.element() != first) {
      throw mustBeNamed(left.element(), first.raw() + ", which is not at its place");
    }
  }

  /** The parameter that a word is for, wherever it stands; nothing where it is no such word. */
  private Optional<Parameter> owner(Tree.Argument said) {
    Piece piece = arguments.tried(said);
    if (piece != null && !(piece.value() instanceof Enum<?>)) {
      return Optional.empty(); // a value of its own
    }
    List<Parameter> owners =
        card.parameters().stream().filter(each -> !has(each) && takes(each, said)).toList();
    if (owners.size() > 1) {
      throw new Unreadable(
          said.at(),
          owners.stream()
              .map(each -> names.shortest(each) + " = " + said.raw())
              .collect(joining(" or ", said.raw() + " is not due here; write ", "")));
    }
    return owners.stream().findFirst();
  }

  private static boolean takes(Parameter parameter, Tree.Argument said) {
    return parameter.options() != null && Arguments.option(parameter.options(), said).isPresent();
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
}

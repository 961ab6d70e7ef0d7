package sheathwright.repl.line;

import java.util.List;
import java.util.Optional;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;

/** A fact stated once for all calls that follow: a variable of its own, by a name of its own. */
final class GivenFact {

  private GivenFact() {}

  static Reading.Made made(Tree.Argument argument, Arguments arguments) {
    if (!argument.isNamed()) {
      throw new Unreadable(
          argument.at(), argument.raw() + " has no name here: given(spacing = 24 in)");
    }
    for (Card card : Catalog.shipped().cards()) {
      Optional<Parameter> parameter = ParameterNames.of(card).parameter(argument.name());
      Optional<Fact> fact = parameter.flatMap(found -> Fact.of(card, found));
      if (fact.isPresent() && isMeant(fact.get(), argument.name(), parameter.get())) {
        Piece piece = arguments.forParameter(parameter.get(), fact.get().word(), argument);
        if (!piece.isKnown()) {
          throw new Beyond();
        }
        String name = fact.get().variable();
        return new Reading.Made(
            name,
            piece.value(),
            JavaType.of(piece),
            "var %s = %s;".formatted(name, piece.java()),
            List.of());
      }
    }
    throw new Unreadable(
        argument.at(),
        "%s cannot be given for all calls, because it does not mean the same in each; name it in the call. What can be given: %s"
            .formatted(argument.name(), Fact.all()));
  }

  /** A first word alone may begin another column elsewhere; a fact is called in full. */
  private static boolean isMeant(Fact fact, String name, Parameter parameter) {
    String folded = ParameterNames.folded(name);
    return folded.equals(ParameterNames.folded(fact.word()))
        || folded.equals(ParameterNames.folded(parameter.column()))
        || fact.columns().stream().anyMatch(column -> folded.equals(ParameterNames.folded(column)))
        || fact == Fact.RISE && folded.equals("pitch")
        || fact == Fact.SPACING && folded.equals("support");
  }
}

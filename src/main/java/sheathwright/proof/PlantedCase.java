package sheathwright.proof;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.IntStream;
import sheathwright.catalog.Card;

/**
 * A certified case whose expected number was moved by twice what it may be off.
 *
 * @param card the function
 * @param planted the case as it was spoiled
 * @param outcome what came of it
 */
public record PlantedCase(Card card, CertifiedCase planted, Outcome outcome) {

  private static final BigDecimal TWICE = BigDecimal.valueOf(2);

  /** The first case of a table that can be spoiled so: one of a number that may be off at all. */
  public static Optional<PlantedCase> in(CaseTable table) {
    return IntStream.range(0, table.cases().size())
        .mapToObj(place -> in(table, place))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<PlantedCase> in(CaseTable table, int place) {
    CertifiedCase honest = table.cases().get(place);
    return Outcome.of(table.card(), honest, table.answer(place)).differences().stream()
        .filter(each -> each.result().unit() != null && each.isOfNumbers() && each.allowed() > 0)
        .findFirst()
        .map(
            each -> {
              BigDecimal moved =
                  new BigDecimal(each.given())
                      .add(BigDecimal.valueOf(each.allowed()).multiply(TWICE));
              CertifiedCase planted =
                  honest.expecting(
                      new CertifiedCase.Expected(each.result(), moved.toPlainString()));
              return new PlantedCase(
                  table.card(), planted, Outcome.of(table.card(), planted, table.answer(place)));
            });
  }

  /** Whether it was reported as wrong, and the only thing. */
  public boolean isFound() {
    return outcome.problems().size() == 1;
  }

  /** What was planted where. */
  public String words() {
    return "%s, case %s, expecting twice its tolerance more"
        .formatted(card.name(), planted.label());
  }
}

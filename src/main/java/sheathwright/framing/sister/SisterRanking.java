package sheathwright.framing.sister;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.sister.SisterSizes.SisterSize;
import sheathwright.wood.LumberSize;

/** Sizes of sisters by price, those alone that pass; it follows when a price or a wood changes. */
final class SisterRanking {

  private static final String NONE_PASSES = "none passes";
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> NOTHING = Figure.of(0, Units.RATIO);
  private static final Figure<Per<Money, Pieces>> FREE = Figure.of(0, Units.USD_PER_PIECE);

  private final List<Entry> entries = new ArrayList<>();

  /** One size, before it has a rank. */
  private record Entry(
      Choice<LumberSize> size,
      SisteredSpan span,
      Figure<Per<Money, Pieces>> price,
      Choice<YesNo> passes) {

    String word() {
      return size.plain();
    }
  }

  /** Adds a size at its price; a price of nothing means that it is not sold. */
  void add(Choice<LumberSize> size, SisteredSpan span, Figure<Per<Money, Pieces>> price) {
    var passes = Condition.all(price.isMoreThan(FREE), span.ok).as("passes_" + size.plain());
    entries.add(new Entry(size, span, price, passes));
  }

  List<SisterSize> ranked() {
    return entries.stream().map(this::ranked).toList();
  }

  private SisterSize ranked(Entry entry) {
    var ratio =
        entry
            .span
            .rafter
            .ratio()
            .max(entry.span.sister.ratio())
            .max(entry.span.deflection.ratio())
            .as("ratio_" + entry.word(), Units.RATIO);
    Figure<Ratio> place = ONE;
    for (Entry other : entries) {
      if (other != entry) {
        place = place.plus(before(other, entry));
      }
    }
    var named = place.as("place_" + entry.word(), Units.RATIO);
    Figure<Ratio> why =
        Figure.choose(
                entry.price.isMoreThan(FREE),
                Figure.none("does not pass", Units.RATIO),
                Figure.none("not sold", Units.RATIO))
            .as("why_not_" + entry.word(), Units.RATIO);
    var rank =
        Figure.choose(entry.passes.is(YesNo.YES), named, why)
            .as("rank_" + entry.word(), Units.RATIO);
    return new SisterSize(
        entry.size,
        entry.span.rafter,
        entry.span.sister,
        entry.span.deflection,
        ratio,
        entry.price,
        entry.passes,
        named,
        rank);
  }

  /** One where a size that passes is cheaper than another, else nothing. */
  private static Figure<Ratio> before(Entry cheaper, Entry dearer) {
    return Figure.choose(
            Condition.all(cheaper.passes.is(YesNo.YES), cheaper.price.isLessThan(dearer.price)),
            ONE,
            NOTHING)
        .as("cheaper_" + cheaper.word() + "_than_" + dearer.word(), Units.RATIO);
  }

  /** The cheapest that passes, of two at one price the smaller. */
  static Choice<String> cheapest(List<SisterSize> sizes) {
    Choice<String> answer = Choice.literal(NONE_PASSES);
    for (int i = sizes.size() - 1; i >= 0; i--) {
      SisterSize size = sizes.get(i);
      answer =
          Choice.choose(isFirst(size), Choice.literal(size.size().plain()), answer)
              .as(i == 0 ? "cheapest" : "cheapest_from_" + size.size().plain(), Source.ARITHMETIC);
    }
    return answer;
  }

  /** The price of the cheapest that passes. */
  static Figure<Per<Money, Pieces>> cheapestPrice(List<SisterSize> sizes) {
    Figure<Per<Money, Pieces>> answer = Figure.none(NONE_PASSES, Units.USD_PER_PIECE);
    for (int i = sizes.size() - 1; i >= 0; i--) {
      SisterSize size = sizes.get(i);
      String name = i == 0 ? "cheapest_usd" : "cheapest_from_" + size.size().plain() + "_usd";
      answer = Figure.choose(isFirst(size), size.price(), answer).as(name, Units.USD_PER_PIECE);
    }
    return answer;
  }

  private static Condition isFirst(SisterSize size) {
    return Condition.all(size.passes().is(YesNo.YES), size.place().isAtMost(ONE));
  }
}

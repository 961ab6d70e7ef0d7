package sheathwright.workbook.told;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;

/**
 * Numbers of a paper told once more, as they were when it was written: whatever is changed in them,
 * or in anything that they are made from, is seen.
 */
public final class OnceMore {

  /** A number as it stands in the file, and as it was when the file was written. */
  private record Again(String what, Figure<?> now, Figure<?> written, Figure<Ratio> changed) {}

  private static final double COLUMN_HEAD_AND_NOTE = 38;
  private static final Figure<Ratio> NOTHING = Figure.of(0, Units.RATIO);

  private final List<Again> all = new ArrayList<>();

  /** An amount, to the cent. */
  public OnceMore amount(String what, Figure<Money> figure) {
    Figure<Money> now = figure.toCents().as("now_usd", Units.USD);
    Figure<Money> written = Told.of("written_usd", now);
    Figure<Money> apart = now.minus(written).max(written.minus(now));
    return with(what, now, written, apart.dividedBy(Figure.of(1, Units.USD)).in(Units.RATIO));
  }

  /** How many. */
  public OnceMore count(String what, Figure<Ratio> figure) {
    Figure<Ratio> now = figure.as("now", Units.RATIO);
    Figure<Ratio> written = Told.of("written", now);
    return with(what, now, written, now.minus(written).max(written.minus(now)));
  }

  private OnceMore with(String what, Figure<?> now, Figure<?> written, Figure<Ratio> apart) {
    Figure<Ratio> changed = Figure.choose(now.isTheSameAs(written), NOTHING, apart);
    all.add(new Again(what, now, written, changed));
    return this;
  }

  /**
   * Writes them below a heading.
   *
   * @param asWritten heads the column of what was written
   * @param ties what is said while nothing is changed
   * @param changed what is said otherwise
   * @return which of the two is said
   */
  public Choice<String> write(
      Sheaf sheaf, String heading, String asWritten, String ties, String changed) {
    Roll roll = roll();
    sheaf.heading(heading, tall(sheaf, roll));
    sheaf
        .tab()
        .list(
            roll,
            List.of("What", "In this file", asWritten, "Changed by"),
            Arrays.asList(null, Units.USD, Units.USD, Units.USD));
    sheaf.tab().note("A number that is typed over in this file shows here.");
    Figure<Ratio> apart = roll.sum("changed_by", Units.RATIO);
    return Choice.choose(apart.isAtMost(NOTHING), Choice.literal(ties), Choice.literal(changed))
        .as("sums_tie");
  }

  /** The first of some sheets of paper on which they fit, or the first of all. */
  public Sheaf fitting(List<Sheaf> sheaves) {
    return sheaves.stream()
        .filter(sheaf -> !sheaf.tab().isEmpty() && sheaf.hasRoom(tall(sheaf, roll())))
        .findFirst()
        .orElse(sheaves.get(0));
  }

  private Roll roll() {
    return Roll.of(
        "once_more",
        "the numbers once more",
        all,
        Roll.<Again>column("item", each -> Choice.literal(each.what())),
        Roll.column("now", Again::now),
        Roll.column("written", Again::written),
        Roll.column("changed_by", Again::changed));
  }

  private static double tall(Sheaf sheaf, Roll roll) {
    return COLUMN_HEAD_AND_NOTE + roll.rows().stream().mapToDouble(sheaf.tab()::tallOf).sum();
  }
}

package sheathwright.job.price;

import java.util.List;
import sheathwright.fastening.strength.NailType;
import sheathwright.figure.Choice;
import sheathwright.job.table.Field;

/** What job.csv may say for whoever sells the material. */
public final class SupplyFields {

  public static final Field<Choice<String>> DELIVER_TO =
      Field.line("deliver_to", "Deliver to").ifKnown();

  public static final Field<Choice<String>> RETURNS =
      Field.text("return_words", "What goes back").ifKnown();

  public static final Field<Choice<NailType>> SISTER_NAIL =
      Field.word(
              "sister_nail",
              "Nail of sisters, scabs and blocks, as the code calls it",
              NailType.class)
          .ifKnown();

  public static final List<Field<?>> ORDER = List.of(DELIVER_TO, RETURNS, SISTER_NAIL);

  private SupplyFields() {}
}

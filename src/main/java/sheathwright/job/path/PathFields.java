package sheathwright.job.path;

import java.util.List;
import sheathwright.fastening.strength.NailType;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.BearsOnWall;
import sheathwright.framing.rafter.HeelJoint;
import sheathwright.framing.rafter.Strut;
import sheathwright.framing.stop.Ridge;
import sheathwright.job.table.Field;
import sheathwright.wood.Knowledge;

/** What job.csv may say of the joints that carry a roof's loads down to the walls. */
public final class PathFields {

  public static final Field<Figure<Nails>> HEEL_NAILS =
      Field.<Figure<Nails>>of(HeelJoint.class, "found", "Nails at each heel joint")
          .named("heel_nails")
          .ifKnown();

  public static final Field<Choice<NailType>> HEEL_NAIL =
      Field.word("heel_nail", "Heel-joint nail", NailType.class).ifKnown();

  public static final Field<Choice<Knowledge>> HEEL_NAILS_KNOWN =
      known("heel_nails_known", "Heel joints, how known");

  public static final Field<Figure<Force>> UPLIFT_TIE =
      Field.number("uplift_tie_lb", "Rafter-to-plate tie, listed uplift", Units.POUND, 0, 10_000)
          .ifKnown();

  public static final Field<Choice<Knowledge>> UPLIFT_TIE_KNOWN =
      known("uplift_tie_known", "Rafter-to-plate tie, how known");

  public static final Field<Figure<Length>> OVERHANG =
      Field.number("overhang_in", "Eave overhang, horizontal", Units.INCH, 0, 96).ifKnown();

  public static final Field<Choice<Knowledge>> OVERHANG_KNOWN =
      known("overhang_known", "Eave overhang, how known");

  /** Each of them may be left out: then nobody has looked. */
  public static final List<Field<?>> PATH =
      List.of(
          HEEL_NAIL,
          HEEL_NAILS,
          HEEL_NAILS_KNOWN,
          UPLIFT_TIE,
          UPLIFT_TIE_KNOWN,
          OVERHANG,
          OVERHANG_KNOWN);

  public static final Field<Choice<Ridge>> RIDGE =
      Field.word("ridge", "Ridge: a board, or a beam on posts", Ridge.class).ifKnown();

  public static final Field<Figure<Length>> STRUT =
      Field.<Figure<Length>>of(Strut.class, "at", "Strut or purlin, from the plate").ifKnown();

  public static final Field<Choice<BearsOnWall>> STRUT_ON_WALL =
      Field.<Choice<BearsOnWall>>of(Strut.class, "onWall", "Strut seen to stand on a bearing wall")
          .ifKnown();

  /** What carries the rafters between plate and ridge, and there. */
  public static final List<Field<?>> HELD_BY = List.of(RIDGE, STRUT, STRUT_ON_WALL);

  private static Field<Choice<Knowledge>> known(String name, String label) {
    return Field.word(name, label, Knowledge.class).ifKnown();
  }

  private PathFields() {}
}

package sheathwright.life.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sheathwright.fastening.strength.FastenerSizes;
import sheathwright.fastening.strength.FastenerSizes.NailSize;
import sheathwright.fastening.strength.NailType;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Shown;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.Job;
import sheathwright.job.site.SiteFields;
import sheathwright.sheathing.panel.PanelCategory;
import sheathwright.sheathing.panel.PanelKind;

/**
 * What material is called where it is sold: {@code 8d common 0.131 x 2-1/2 in}, {@code 5/8 in
 * plywood 4x8, span rating 40/20}. Each name follows the choice that it is of.
 */
final class SupplyNames {

  private static final List<PanelCategory> THICKNESSES = List.of(PanelCategory.values());

  private SupplyNames() {}

  /**
   * A nail by its name and size.
   *
   * @param owner begins the names of the cells that lead to it
   */
  static Choice<String> nail(Choice<NailType> nail, String owner) {
    if (nail.refusal().isPresent()) {
      return Choice.literal(owner + " nails, not said which");
    }
    Choice<String> name = Choice.literal(name(NailType.values()[0]));
    for (NailType type : NailType.values()) {
      name =
          Choice.choose(nail.is(type), Choice.literal(name(type)), name)
              .as("%s_nail_name_%s".formatted(owner, type.ordinal() + 1));
    }
    return name.as(owner + "_nail_name");
  }

  private static String name(NailType type) {
    NailSize size = FastenerSizes.nailDimensions(type);
    String word = type.word();
    if (size.length().refusal().isPresent()) {
      return word + ", of no size in the list of nails";
    }
    String bare =
        word.startsWith("rsrs")
            ? word.toUpperCase(Locale.ROOT)
            : word.replaceFirst("-\\d.*", "").replace('-', ' ');
    return "%s %s x %s in"
        .formatted(
            bare, Shown.plain(size.diameter().value()), Lengths.inInches(size.length().value()));
  }

  /** The new panels as they are stamped, as far as the job says. */
  static Choice<String> panel(Job job) {
    List<Traced> parts = new ArrayList<>();
    if (job.knows(SiteFields.PANEL_THICKNESS)) {
      parts.add(thickness(job.fact(SiteFields.PANEL_THICKNESS)));
    }
    if (job.knows(SiteFields.PANEL_KIND)) {
      parts.add(
          Choice.choose(
                  job.fact(SiteFields.PANEL_KIND).is(PanelKind.OSB),
                  Choice.literal("OSB"),
                  Choice.literal("plywood"))
              .as("panel_kind_name"));
    } else {
      parts.add(Choice.literal("panel"));
    }
    if (job.knows(SiteFields.PANEL_RATING)) {
      parts.add(Choice.literal(" 4x8, span rating "));
      parts.add(job.fact(SiteFields.PANEL_RATING));
    } else {
      parts.add(Choice.literal(" 4x8, span rating not said"));
    }
    return Choice.sentence(parts.toArray(Traced[]::new)).as("panel_name");
  }

  /** In the fraction that is stamped, where it is one that is sold. */
  private static Choice<String> thickness(Figure<Length> given) {
    Choice<String> words =
        Choice.sentence(given.in(Units.INCH), Choice.literal(" in ")).as("panel_inches_name");
    for (PanelCategory category : THICKNESSES) {
      String fraction = category.word().replace("-in", "");
      words =
          Choice.choose(
                  given.isTheSameAs(Figure.of(Lengths.inches(fraction), Units.INCH)),
                  Choice.literal(fraction + " in "),
                  words)
              .as("panel_inches_name_" + (category.ordinal() + 1));
    }
    return words;
  }

  /** With rings on its shank, if the job says that it has them. */
  static Choice<String> withItsShank(Choice<String> nail, Job job) {
    return job.knows(SiteFields.RING_SHANK)
        ? Choice.sentence(
                nail,
                Choice.choose(
                        job.fact(SiteFields.RING_SHANK).is(YesNo.YES),
                        Choice.literal(", ring shank"),
                        Choice.literal(", smooth shank"))
                    .as("deck_nail_shank_name"))
            .as("deck_nail_name_and_shank")
        : nail;
  }
}

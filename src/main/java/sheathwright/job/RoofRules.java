package sheathwright.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Shown;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.DeckBoards;
import sheathwright.job.life.Item;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.MarkNames;
import sheathwright.job.site.SiteFields;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;
import sheathwright.job.table.KeyedTable;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.sheathing.place.BillRule;
import sheathwright.sheathing.place.PlaceMap;
import sheathwright.sheathing.place.SheetUnits;
import sheathwright.wood.Knowledge;

/**
 * What must hold between the tables that tell of a roof. What does not is said where it stands;
 * nothing is raised here.
 */
final class RoofRules {

  private final KeyedTable job;
  private final Facts facts;
  private final Map<JobTable, ReadTable> tables;
  private final DeckBoards boards;

  RoofRules(KeyedTable job, Map<JobTable, ReadTable> tables) {
    this.job = job;
    this.facts = job.facts();
    this.tables = tables;
    this.boards = new DeckBoards(tables.get(JobTable.PLANES));
  }

  /**
   * Says everything that does not hold.
   *
   * @param surveys whether rafters were read at several stations
   */
  void hold(boolean surveys) {
    ReadTable planes = tables.get(JobTable.PLANES);
    tables.forEach(
        (name, table) -> {
          if (name != JobTable.PLANES) {
            table.known(PlaceFields.PLANE, "a plane", planes, PlaceFields.PLANE);
          }
        });
    planes.once(PlaceFields.PLANE);
    planes.rows().forEach(this::isMeasured);
    ReadTable marks = tables.get(JobTable.MARKS);
    MarkNames.of(marks.rows()).tellApart(marks);
    tables.get(JobTable.MARKS).rows().forEach(this::isSomewhere);
    boards.hold(
        PlaceFields.OLD_SHEETS,
        tables.get(JobTable.JOINTS),
        tables.get(JobTable.ZONES),
        marks,
        PlaceFields.HEIGHT);
    tables.get(JobTable.REPORTS).once(FramingFields.REPORT);
    oneDeadLoad(surveys);
    oneSagLimit();
    KnownRafters.KNOWN.forEach(this::toldBySomebody);
    knownOfSomething(KnownRafters.SPECIES_KNOWN, FramingFields.SPECIES);
    if (surveys) {
      tables.get(JobTable.READINGS).rows().forEach(this::dropOrReading);
    } else {
      tables.get(JobTable.READINGS).once(PlaceFields.RAFTER);
    }
    tables.get(JobTable.READINGS).rows().forEach(this::readSomething);
    shimsBelowSisters();
  }

  /** A day on which nothing was read is half of something. */
  private void readSomething(Row reading) {
    if (reading.has(LifeFields.WHEN_DONE_ON) && !reading.has(LifeFields.WHEN_DONE)) {
      tables
          .get(JobTable.READINGS)
          .problem(
              reading,
              LifeFields.WHEN_DONE,
              "it is empty, but %s says when it was read; give how far the rafter lies below the string, such as 1/8, or leave both empty"
                  .formatted(LifeFields.WHEN_DONE_ON.name()));
    }
  }

  /** A plane has an eave and a slope length, or else corners. */
  private void isMeasured(Row plane) {
    boolean isSquare = plane.has(PlaceFields.EAVE) && plane.has(PlaceFields.SLOPE_LENGTH);
    if (!isSquare && !plane.has(PlaceFields.CORNERS)) {
      tables
          .get(JobTable.PLANES)
          .problem(
              plane,
              plane.has(PlaceFields.EAVE) ? PlaceFields.SLOPE_LENGTH : PlaceFields.EAVE,
              "it is empty; a plane takes eave_ft and slope_length_ft, or corners_ft such as 0 0, 40 0, 28 12, 12 12");
    }
  }

  /** A mark has four measures, or else names its place. */
  private void isSomewhere(Row mark) {
    List<Field<Figure<Length>>> missing =
        PlaceFields.MEASURES.stream()
            .filter(measure -> !mark.has(measure))
            .filter(measure -> measure != PlaceFields.HEIGHT || !mark.has(DeckBoards.COUNT))
            .toList();
    boolean isNamed = mark.has(PlaceFields.SHEET) && missing.size() == PlaceFields.MEASURES.size();
    if (!missing.isEmpty() && !isNamed) {
      tables
          .get(JobTable.MARKS)
          .problem(
              mark,
              missing.get(0),
              boards.isUnder(mark)
                  ? "it is empty; a mark on boards takes along_in, up_in, width_in, and height_in or boards"
                  : "it is empty; a mark takes along_in, up_in, width_in and height_in, or instead of all four a place in sheet such as A-3-5");
    }
  }

  /** The dead load is given, or made from the layers of the roof. */
  private void oneDeadLoad(boolean surveys) {
    ReadTable layers = tables.get(JobTable.LAYERS);
    boolean isGiven = job.mentions(FramingFields.DEAD);
    boolean isAsked = surveys || FramingFields.RAFTERS.stream().anyMatch(job::mentions);
    if (isAsked && !isGiven && !layers.isThere()) {
      layers.problem(
          "this table is missing, and so is dead_psf in %s: what the rafters carry; give dead_psf, such as 10, or a line for each layer of the roof"
              .formatted(JobTable.JOB.file()));
    } else if (facts.knows(FramingFields.DEAD) && layers.isThere()) {
      job.problem(
          FramingFields.DEAD,
          "%s makes the dead load; take one of the two out".formatted(JobTable.LAYERS.file()));
    }
  }

  /** The limits of sag are given, or follow from the ceiling. */
  private void oneSagLimit() {
    if (facts.knows(FramingFields.DEFLECTION_LIMIT) && facts.knows(SiteFields.CEILING)) {
      job.problem(FramingFields.DEFLECTION_LIMIT, "the ceiling makes it; take one of the two out");
    }
  }

  /** What was told was told by somebody. */
  private void toldBySomebody(Field<Choice<Knowledge>> how) {
    if (facts.knows(how)
        && facts.fact(how).value() == Knowledge.IS_TOLD
        && !facts.knows(KnownRafters.TOLD_BY)) {
      job.problem(how, "told is given; say by whom in a line told_by, or give unknown");
    }
  }

  /** What is known in some way is given. */
  private void knownOfSomething(Field<Choice<Knowledge>> how, Field<?> fact) {
    if (facts.knows(how)
        && facts.fact(how).value() != Knowledge.IS_UNKNOWN
        && !job.mentions(fact)) {
      job.problem(
          how,
          "%s is given, but %s is missing; give it, or unknown here"
              .formatted(facts.fact(how).value().word(), fact.name()));
    }
  }

  /** A station has its drop, or what was read under the string. */
  private void dropOrReading(Row station) {
    if (station.has(PlaceFields.DROP) == station.has(SurveyFields.READING)) {
      tables
          .get(JobTable.READINGS)
          .problem(
              station,
              PlaceFields.DROP,
              "give the drop_in below the string or the reading_in under it, one of the two");
    }
  }

  private void shimsBelowSisters() {
    if (!facts.knows(JobFields.SHIM_TOLERANCE) || !facts.knows(JobFields.SISTER_TOLERANCE)) {
      return;
    }
    Figure<Length> shim = facts.fact(JobFields.SHIM_TOLERANCE);
    Figure<Length> sister = facts.fact(JobFields.SISTER_TOLERANCE);
    if (shim.value() > sister.value()) {
      job.problem(
          JobFields.SHIM_TOLERANCE,
          "%s is given; it must not be more than sister_tolerance_in, %s".formatted(shim, sister));
    }
  }

  /**
   * That more sheets are in the price than the old deck has, as was quoted or as was agreed.
   *
   * @param maps of all planes
   */
  List<Problem> beyondTheMap(Collection<PlaceMap> maps) {
    Choice<BillRule> rule =
        facts.knows(JobFields.BILL_RULE)
            ? facts.fact(JobFields.BILL_RULE)
            : Choice.literal(BillRule.HALF);
    double most =
        SheetUnits.together(maps.stream().map(PlaceMap::units).toList()).by(rule, "").value();
    String message =
        "%s is given, but the old deck has %s sheets by the bill rule %s; no more is ever found: give at most that";
    Function<Figure<?>, String> said =
        given -> message.formatted(given.plain(), Shown.plain(most), rule.plain());
    List<Problem> problems = new ArrayList<>();
    ReadTable agreed = tables.get(JobTable.AGREED);
    for (Row item : agreed.rows()) {
      boolean isSheet =
          item.read(AgreedFields.ITEM)
              .filter(name -> name.value().equals(Item.SHEET.word()))
              .isPresent();
      item.read(AgreedFields.INCLUDED)
          .filter(included -> isSheet && included.value() > most)
          .map(included -> agreed.said(item, AgreedFields.INCLUDED, said.apply(included)))
          .ifPresent(problems::add);
    }
    if (!agreed.isThere() && facts.knows(JobFields.PLANNED_SHEETS)) {
      Figure<Sheets> planned = facts.fact(JobFields.PLANNED_SHEETS);
      if (planned.value() > most) {
        problems.add(job.said(JobFields.PLANNED_SHEETS, said.apply(planned)));
      }
    }
    return problems;
  }
}

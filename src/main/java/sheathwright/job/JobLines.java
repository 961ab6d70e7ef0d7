package sheathwright.job;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.Amounts;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.job.life.MarkNames;
import sheathwright.job.price.LumberFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;

/**
 * A job's tables as lines of Java that declare what they say: each fact, price and rate under its
 * table's name for it, each plane, its supports, marks and readings under the plane's. Each is then
 * a variable like any other, to be changed and computed with.
 *
 * <p>Does not cover layers, reports and what a maker asks: those are tables of words for {@code
 * quote}.
 */
public final class JobLines {

  private final Job job;
  private final Path folder;
  private final List<String> lines = new ArrayList<>();
  private final Set<String> names = new HashSet<>();

  private JobLines(Path folder) {
    this.folder = folder;
    JobTables tables = JobTables.in(folder);
    job = Job.of(tables);
    job.labeledFacts().values().forEach(this::addFact);
    job.labeledPrices().values().forEach(this::addFact);
    job.lumber().lines().forEach(this::addStick);
    job.labeledRates().values().forEach(this::addFact);
    job.planes().forEach(this::addPlane);
    boolean isMeasured =
        job.planes().stream()
            .noneMatch(row -> on(row.of(PlaceFields.PLANE).plain(), job.supports()).isEmpty());
    if (!isMeasured) {
      add("rafters", "Supports.every(%s)".formatted(job.fact(JobFields.SUPPORT_SPACING).name()));
    }
    if (!job.marks().isEmpty()) {
      new Estimate(job).deck().marked().forEach(this::addMark);
    }
    boolean hasDrops =
        tables.surveysRafters()
            && job.readings().stream().allMatch(row -> row.has(PlaceFields.DROP));
    if (hasDrops) {
      job.planes().forEach(this::addReadings);
    }
  }

  /**
   * The lines of the job in a folder. What is done about its marks is what a quote says.
   *
   * @throws sheathwright.job.table.ProblemsException with everything that is wrong with it
   */
  public static List<String> of(Path folder) {
    return List.copyOf(new JobLines(folder).lines);
  }

  private void add(String name, String value) {
    String legal = legal(name);
    String own = legal;
    for (int i = 2; !names.add(own); i++) {
      own = legal + "_" + i;
    }
    lines.add(own + " = " + value);
  }

  private static String legal(String name) {
    return name.replaceAll("\\W", "_");
  }

  private void addFact(Traced fact) {
    add(fact.name(), java(fact));
  }

  private void addStick(Row stick) {
    add(
        "stick_%s_%s_ft"
            .formatted(stick.of(LumberFields.SIZE).plain(), stick.of(LumberFields.LENGTH).plain()),
        java(stick.of(LumberFields.PRICE)));
  }

  private void addPlane(Row row) {
    String name = row.of(PlaceFields.PLANE).plain();
    StringBuilder plane = new StringBuilder();
    if (row.has(PlaceFields.CORNERS)) {
      plane.append(
          "Plane.outline(%s, %s)".formatted(quoted(name), java(row.of(PlaceFields.CORNERS))));
    } else {
      plane.append(
          "Plane.trapezoid(%s, %s, %s, %s, %s)"
              .formatted(
                  quoted(name),
                  java(row.of(PlaceFields.EAVE)),
                  java(row.of(PlaceFields.SLOPE_LENGTH)),
                  java(OldDeck.lean(row, PlaceFields.LEFT_LEAN)),
                  java(OldDeck.lean(row, PlaceFields.RIGHT_LEAN))));
    }
    for (Row opening : on(name, job.openings())) {
      plane
          .append(".without(")
          .append(
              cells(
                  opening,
                  PlaceFields.OPENING_ALONG,
                  PlaceFields.OPENING_UP,
                  PlaceFields.OPENING_WIDTH,
                  PlaceFields.OPENING_HEIGHT));
      plane.append(')');
    }
    add("plane_" + name, plane.toString());
    List<Row> rafters = on(name, job.supports());
    if (!rafters.isEmpty()) {
      String centers =
          rafters.stream().map(each -> cells(each, PlaceFields.CENTER)).collect(joining(", "));
      add("rafters_" + name, "Supports.at(" + centers + ")");
    }
    add("places_" + name, "places(%s, %s)".formatted(legal("plane_" + name), oldJoints(row)));
  }

  private String oldJoints(Row row) {
    StringBuilder joints = new StringBuilder("OldJoints.ASSUMED");
    Map.of(
            "first", PlaceFields.FIRST_JOINT,
            "stagger", PlaceFields.STAGGER,
            "firstCourse", PlaceFields.FIRST_COURSE)
        .entrySet()
        .stream()
        .filter(part -> row.has(part.getValue()))
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            part -> joints.append(".%s(%s)".formatted(part.getKey(), cells(row, part.getValue()))));
    List<Row> measured = on(row.of(PlaceFields.PLANE).plain(), job.joints());
    if (!measured.isEmpty()) {
      joints.append(
          measured.stream()
              .map(joint -> cells(joint, PlaceFields.COURSE, PlaceFields.JOINT))
              .map("new MeasuredJoint(%s)"::formatted)
              .collect(joining(", ", ".measured(List.of(", "))")));
    }
    return joints.toString();
  }

  /** A mark, decided as a quote decides about it. */
  private void addMark(Deck.Marked marked) {
    Row row = marked.row();
    String key = MarkNames.of(job.marks()).of(row);
    String where =
        row.has(PlaceFields.WIDTH)
            ? cells(row, PlaceFields.ALONG, PlaceFields.UP, PlaceFields.WIDTH, PlaceFields.HEIGHT)
            : "%s, Choice.literal(%s)"
                .formatted(
                    legal("places_" + row.of(PlaceFields.PLANE).plain()),
                    quoted(row.of(PlaceFields.SHEET).plain()));
    String decided =
        marked
            .mark()
            .action()
            .map(done -> ".decided(Choice.literal(%s))".formatted(quoted(done.plain())))
            .orElse("");
    add(
        "mark_" + key,
        "Mark.of(%s, %s, %s)%s"
            .formatted(quoted(key), java(row.of(PlaceFields.FINDING)), where, decided));
  }

  private void addReadings(Row row) {
    String plane = row.of(PlaceFields.PLANE).plain();
    if (!on(plane, job.readings()).isEmpty()) {
      String file = folder.resolve(JobTable.READINGS.file()).toString();
      add("readings_" + plane, "stringReadings(%s, %s)".formatted(quoted(file), quoted(plane)));
    }
  }

  private static List<Row> on(String plane, List<Row> rows) {
    return rows.stream().filter(row -> row.of(PlaceFields.PLANE).plain().equals(plane)).toList();
  }

  private static String cells(Row row, Field<?>... columns) {
    return List.of(columns).stream().map(row::of).map(JobLines::java).collect(joining(", "));
  }

  /** A value as Java says it. */
  private static String java(Traced value) {
    if (value instanceof Figure<?> figure) {
      return "%s(%s)".formatted(amount(figure.unit()), figure.plain());
    }
    Object word = ((Choice<?>) value).value();
    return word instanceof Enum<?> option
            && Modifier.isPublic(option.getDeclaringClass().getModifiers())
        ? withoutPackage(option.getDeclaringClass()) + "." + option.name()
        : quoted(value.plain());
  }

  private static String withoutPackage(Class<?> type) {
    return type.getCanonicalName().substring(type.getPackageName().length() + 1);
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  /** The word that says an amount in a unit. */
  private static String amount(Unit<?> unit) {
    for (Method method : Amounts.class.getMethods()) {
      if (method.getParameterCount() == 1
          && method.getParameterTypes()[0] == double.class
          && unitOf(method).equals(unit)) {
        return method.getName();
      }
    }
    throw new RefusedException("there is no word for an amount in " + unit);
  }

  private static Unit<?> unitOf(Method amount) {
    try {
      return ((Figure<?>) amount.invoke(null, 1.0)).unit();
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}

package sheathwright.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.Birdsmouth;
import sheathwright.framing.stop.KnownFacts;
import sheathwright.job.site.SiteFields;
import sheathwright.job.table.Field;
import sheathwright.wood.Grade;
import sheathwright.wood.Knowledge;
import sheathwright.wood.Lumber;
import sheathwright.wood.Moisture;
import sheathwright.wood.Species;
import sheathwright.wood.Stock;

/**
 * How the facts of a job's rafters are known, and what is taken for those that nobody knows: the
 * worst, where there is one; without the others nobody may say anything.
 */
final class KnownRafters {

  static final Field<Choice<Knowledge>> SPECIES_KNOWN =
      FramingFields.how("species", "Species, how known");

  static final Field<Choice<Knowledge>> GRADE_KNOWN =
      FramingFields.how("grade", "Grade, how known");

  static final Field<Choice<Knowledge>> SIZE_KNOWN =
      FramingFields.how("rafter_size", "Size, how known");

  static final Field<Choice<Knowledge>> SPAN_KNOWN = FramingFields.how("span", "Span, how known");

  static final Field<Choice<Knowledge>> BEARING_KNOWN =
      FramingFields.how("bearing", "Bearing, how known");

  static final Field<Choice<Knowledge>> NOTCH_KNOWN =
      Field.<Choice<Knowledge>>of(Birdsmouth.class, "known", "Seat cut, how known").ifKnown();

  static final Field<Choice<Knowledge>> MOISTURE_KNOWN =
      FramingFields.how("moisture", "Moisture, how known");

  static final Field<Choice<Knowledge>> STOCK_KNOWN =
      FramingFields.how("rafter_stock", "Lumber type, how known");

  /** Ties that nobody saw are none. */
  static final Field<Choice<Knowledge>> TIES_KNOWN =
      FramingFields.how("ties", "Rafter ties, how known");

  /** Where one group alone was ever sold, wood that nobody can name is of that one. */
  static final Field<Choice<Species>> REGION_SPECIES =
      Field.<Choice<Species>>of(Lumber.class, "species", "The one species group sold in the region")
          .named("region_species")
          .ifKnown();

  static final Field<Choice<String>> TOLD_BY = Field.line("told_by", "Told by").ifKnown();

  static final List<Field<Choice<Knowledge>>> KNOWN =
      List.of(
          SPECIES_KNOWN,
          GRADE_KNOWN,
          SIZE_KNOWN,
          SPAN_KNOWN,
          BEARING_KNOWN,
          NOTCH_KNOWN,
          MOISTURE_KNOWN,
          STOCK_KNOWN,
          TIES_KNOWN);

  /** What wood the deck is nailed to: rafters, or trusses that nobody checks. */
  static final List<Field<?>> WOOD =
      List.of(
          FramingFields.SPECIES,
          SPECIES_KNOWN,
          REGION_SPECIES,
          FramingFields.MOISTURE,
          MOISTURE_KNOWN,
          TOLD_BY);

  /** What a job may say of how it knows its rafters; what it leaves out is unknown. */
  static final List<Field<?>> FIELDS =
      KNOWN.stream().filter(how -> !WOOD.contains(how)).<Field<?>>map(how -> how).toList();

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);

  final Choice<Species> species;
  final Choice<Grade> grade;
  final Choice<Moisture> moisture;
  final Choice<Stock> stock;
  private final Job job;

  KnownRafters(Job job) {
    this.job = job;
    OneOf<Species> least =
        job.knows(REGION_SPECIES) ? job.fact(REGION_SPECIES) : Species.UNKNOWN_SPECIES;
    species = taken(FramingFields.SPECIES, SPECIES_KNOWN, least, "species_taken");
    grade = taken(FramingFields.GRADE, GRADE_KNOWN, Grade.UNKNOWN_GRADE, "grade_taken");
    moisture = taken(FramingFields.MOISTURE, MOISTURE_KNOWN, Moisture.STAYS_WET, "moisture_taken");
    stock = taken(FramingFields.RAFTER_STOCK, STOCK_KNOWN, leastStock(), "stock_taken");
  }

  /** How a fact is known: what was told was told by somebody. */
  private Choice<Knowledge> known(Field<Choice<Knowledge>> field) {
    Choice<Knowledge> how = job.wordOr(field, Knowledge.IS_UNKNOWN);
    return job.knows(TOLD_BY) || !job.knows(field)
        ? how
        : how.onlyIf(
                Condition.any(
                    how.is(Knowledge.IS_MEASURED),
                    how.is(Knowledge.IS_STAMPED),
                    how.is(Knowledge.IS_ASSUMED),
                    how.is(Knowledge.IS_UNKNOWN)),
                "told is given; say by whom in a line told_by, or give unknown")
            .as(field.name() + "_by_somebody");
  }

  /** What is taken for a fact: as it was given, or the worst where nobody knows. */
  private <E> Choice<E> taken(
      Field<Choice<E>> fact, Field<Choice<Knowledge>> how, OneOf<E> worst, String name) {
    return job.knows(fact) && job.knows(how)
        ? Choice.choose(known(how).is(Knowledge.IS_UNKNOWN), worst, job.fact(fact)).as(name)
        : worst.choice().as(name);
  }

  /** Nothing graded is smaller than dressed; a ripped stick has no grade, whoever says so. */
  private OneOf<Stock> leastStock() {
    if (!job.knows(FramingFields.RAFTER_STOCK)) {
      return Stock.DRESSED;
    }
    Choice<Stock> given = job.fact(FramingFields.RAFTER_STOCK);
    return Choice.choose(given.is(Stock.RIPPED), given, Stock.DRESSED).as("least_stock");
  }

  /** How the seat cut is known. */
  Choice<Knowledge> notch() {
    return job.knows(FramingFields.NOTCH)
        ? known(NOTCH_KNOWN)
        : Choice.literal(Knowledge.IS_UNKNOWN);
  }

  /** What was taken, labeled, for the page that shows what the checks were made from. */
  Map<String, Choice<?>> taken() {
    Map<String, Choice<?>> taken = new LinkedHashMap<>();
    taken.put("Species taken", species);
    taken.put("Grade taken", grade);
    taken.put("Lumber type taken", stock);
    taken.put("Moisture taken", moisture);
    return taken;
  }

  /** What the job does not say how it knows. */
  List<String> unsaid() {
    return KNOWN.stream().filter(field -> !job.knows(field)).map(Field::label).toList();
  }

  /** How much of it nobody knows, and how much is assumed. */
  KnownFacts facts() {
    Stream<Figure<Ratio>> needed =
        Stream.of(SIZE_KNOWN, SPAN_KNOWN, BEARING_KNOWN, TIES_KNOWN)
            .map(field -> counted(field, Knowledge.IS_UNKNOWN));
    Stream<Figure<Ratio>> slope =
        job.knows(SiteFields.RISE)
            ? Stream.of()
            : Stream.of(
                Figure.choose(notch().is(Knowledge.IS_UNKNOWN), ONE, NONE)
                    .as("seat_cut_without_slope", Units.RATIO));
    return new KnownFacts(
        sum(Stream.concat(needed, slope)).as("facts_not_known", Units.RATIO),
        sum(KNOWN.stream().filter(job::knows).map(field -> counted(field, Knowledge.IS_ASSUMED)))
            .as("facts_assumed", Units.RATIO));
  }

  /** The same of sisters beside the rafters: whether they bear at both ends belongs to it. */
  KnownFacts sisterFacts(KnownFacts ofRafters) {
    return new KnownFacts(
        ofRafters
            .unknown()
            .plus(counted(FramingFields.SISTER_BEARS_KNOWN, Knowledge.IS_UNKNOWN))
            .as("sister_facts_not_known", Units.RATIO),
        ofRafters
            .assumed()
            .plus(counted(FramingFields.SISTER_BEARS_KNOWN, Knowledge.IS_ASSUMED))
            .as("sister_facts_assumed", Units.RATIO));
  }

  private Figure<Ratio> counted(Field<Choice<Knowledge>> field, Knowledge how) {
    Condition is = known(field).is(how);
    return Figure.choose(is, ONE, NONE).as(field.name() + "_is_" + how.word(), Units.RATIO);
  }

  private static Figure<Ratio> sum(Stream<Figure<Ratio>> counts) {
    return counts.reduce(Figure::plus).orElse(NONE);
  }
}

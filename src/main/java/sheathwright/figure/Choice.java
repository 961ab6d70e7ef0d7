package sheathwright.figure;

import java.util.List;
import java.util.Optional;

/** A word that remembers: a species, a grade, an answer. */
public final class Choice<E> implements Traced, OneOf<E> {

  private final String name;
  private final E value;
  private final Refusal refusal;
  private final Step step;
  private final Source source;

  Choice(String name, E value, Refusal refusal, Step step, Source source) {
    this.name = name;
    this.value = value;
    this.step = step;
    this.source = source;
    this.refusal = Refusal.of(this, refusal);
  }

  /** An option named in passing. */
  public static <E> Choice<E> literal(E value) {
    return given("", value, Step.Given.Role.LITERAL, Source.GIVEN);
  }

  /** A word that whoever holds the workbook may change. */
  public static <E> Choice<E> input(String name, E value, Source source) {
    return given(name, value, Step.Given.Role.INPUT, source);
  }

  /** A word that has to be given and was not. */
  public static <E> Choice<E> missing(String name, Class<?> options) {
    String allowed = "one of " + String.join(", ", wordsOf(options));
    Step step = new Step.Given(Step.Given.Role.LITERAL, Limits.NONE);
    return new Choice<>(name, null, Refusal.missing(name, allowed), step, Source.GIVEN);
  }

  private static <E> Choice<E> given(String name, E value, Step.Given.Role role, Source source) {
    return new Choice<>(name, value, null, new Step.Given(role, Limits.NONE), source);
  }

  /** Feet and whole inches in words, {@code 16-9}, from a length rounded to the inch. */
  public static Choice<String> feetAndInches(Figure<Quantity.Length> wholeInches) {
    Figure<?> inches = wholeInches.in(Units.INCH);
    Refusal refusal = inches.refusal().orElse(null);
    long whole = Math.round(inches.number());
    String spelled = whole / 12 + "-" + whole % 12;
    return new Choice<>("", spelled, refusal, new Step.Spelled(inches), Source.ARITHMETIC);
  }

  /**
   * Words and numbers one after the other, each number with the digits that a spreadsheet holds.
   */
  public static Choice<String> sentence(Traced... parts) {
    List<Traced> all = List.of(parts);
    Refusal refusal =
        all.stream().flatMap(part -> part.refusal().stream()).findFirst().orElse(null);
    String text =
        refusal != null
            ? null
            : all.stream().map(Choice::inASentence).collect(java.util.stream.Collectors.joining());
    return new Choice<>("", text, refusal, new Step.Sentence(all), Source.ARITHMETIC);
  }

  private static String inASentence(Traced part) {
    return part instanceof Figure<?> figure
        ? Shown.plain(Rounding.toFifteenDigits(figure.value()))
        : part.plain();
  }

  /** Words that name the first line of a list which a column of ones and zeros marks. */
  static Choice<String> firstMarked(
      Roll roll, String marks, String labels, String before, String after) {
    Step step = new Step.FirstMarked(roll, marks, labels, before, after);
    int first = roll.cellsOf(marks).stream().map(Traced::plain).toList().indexOf("1");
    String found = first < 0 ? "" : roll.cellsOf(labels).get(first).plain();
    return new Choice<>("", before + found + after, null, step, Source.ARITHMETIC);
  }

  static Choice<String> lookedUp(String words, Refusal refusal, Step.LookedUp step, Source source) {
    return new Choice<>("", words, refusal, step, source);
  }

  /** The one word if the condition holds, else the other. */
  public static <E> Choice<E> choose(Condition when, OneOf<E> then, OneOf<E> otherwise) {
    Step step = new Step.Chosen(when, then.choice(), otherwise.choice());
    Refusal undecided = when.refusal().orElse(null);
    if (undecided != null) {
      return new Choice<>("", null, undecided, step, Source.ARITHMETIC);
    }
    Choice<E> taken = when.holds() ? then.choice() : otherwise.choice();
    return new Choice<>("", taken.value, taken.refusal, step, Source.ARITHMETIC);
  }

  /** The same word under a name. */
  public Choice<E> as(String newName) {
    return as(newName, source);
  }

  /** This argument; a word named in passing takes the parameter's name, any other keeps its own. */
  public Choice<E> argument(String parameter) {
    boolean isPassing = step.isLiteral() && !isNamed();
    return isPassing ? as(parameter) : this;
  }

  /** The same word under a name, with the rule that made it. */
  public Choice<E> as(String newName, Source newSource) {
    return new Choice<>(newName, value, refusal, step, newSource);
  }

  /** This word, refused where a condition does not hold. */
  public Choice<E> onlyIf(Condition condition, String reason) {
    Refusal broken = refusal().or(condition::refusal).orElse(null);
    if (broken == null && !condition.holds()) {
      broken = new Refusal(reason);
    }
    return new Choice<>("", value, broken, new Step.Provided(this, condition), source);
  }

  /** Whether it is this option. */
  public Condition is(E option) {
    return new Condition(option.equals(value), refusal, new Step.Matched(this, option));
  }

  /** Whether it is the same word as another. */
  public Condition isTheSameAs(Choice<?> other) {
    Refusal either = refusal != null ? refusal : other.refusal;
    boolean holds = either == null && plain().equals(other.plain());
    return new Condition(holds, either, new Step.Alike(this, other));
  }

  /** The option itself; raises its refusal if there is none. */
  public E value() {
    if (refusal != null) {
      throw refusal.raised();
    }
    return value;
  }

  /** Every option that could stand here, as words; empty if the set is open. */
  public List<String> options() {
    return value instanceof Enum<?> constant ? wordsOf(constant.getDeclaringClass()) : List.of();
  }

  /** Every option of an enum, as words. */
  public static List<String> wordsOf(Class<?> options) {
    return java.util.Arrays.stream(options.getEnumConstants()).map(Choice::wordFor).toList();
  }

  static String wordFor(Object option) {
    return option instanceof Word word ? word.word() : String.valueOf(option);
  }

  @Override
  public Choice<E> choice() {
    return this;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String symbol() {
    return isNamed() ? name.replace('_', ' ') : wordFor(value);
  }

  @Override
  public Step step() {
    return step;
  }

  @Override
  public Source source() {
    return source;
  }

  @Override
  public Optional<Refusal> refusal() {
    return Optional.ofNullable(refusal);
  }

  @Override
  public String shown() {
    return wordFor(value());
  }

  @Override
  public String plain() {
    return wordFor(value());
  }

  @Override
  public String toString() {
    return refusal == null ? shown() : "refused: " + refusal.reason();
  }
}

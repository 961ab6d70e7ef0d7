package sheathwright.repl.tab;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.Member;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Amounts;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Unit;
import sheathwright.repl.line.ParameterNames;

/**
 * What could come next where the cursor stands: inside a call of the catalog only what fits the
 * parameter that is due, elsewhere what begins so.
 *
 * @param said stands above the line: the whole call, what is due marked; empty if there is nothing
 *     to say
 * @param prefix what has been typed of the word
 * @param offers what fits, each with what it is
 */
public record Suggestions(String said, String prefix, List<Offer> offers) {

  private static final Pattern WORD = Pattern.compile("[A-Za-z_]\\w*$");
  private static final Pattern MEMBER = Pattern.compile("\\.\\s*$");

  /**
   * One thing that can be typed.
   *
   * @param text what to type
   * @param about what it is; empty if its name says all
   */
  public record Offer(String text, String about) {}

  /**
   * What could come next.
   *
   * @param text the line up to the cursor
   * @param variables what the session holds
   * @param commands what a line that is a command can go on with, from the line up to the word that
   *     is begun
   * @param java what the Java shell would put in place of the last word
   */
  public static Suggestions after(
      String text,
      Map<String, Object> variables,
      Function<String, List<Offer>> commands,
      Function<String, List<String>> java) {
    Matcher word = WORD.matcher(text);
    String prefix = word.find() ? word.group() : "";
    String before = text.substring(0, text.length() - prefix.length());
    List<Offer> further = commands.apply(before);
    if (!further.isEmpty()) {
      return fitting("", prefix, further);
    }
    boolean isMember = MEMBER.matcher(before).find();
    Optional<OpenCall> call = OpenCall.in(text);
    if (!isMember && call.isPresent()) {
      Optional<Card> card = card(call.get().callee());
      if (card.isPresent()) {
        return inCall(call.get(), card.get(), prefix, variables);
      }
      if (prefix.isEmpty()) {
        return new Suggestions("", "", held(variables, value -> true));
      }
    }
    if (prefix.isEmpty() && !isMember) {
      return atTheBeginning(variables);
    }
    List<Offer> offers =
        java.apply(text).stream().distinct().map(each -> new Offer(each, summary(each))).toList();
    return new Suggestions("", prefix, offers);
  }

  private static Suggestions atTheBeginning(Map<String, Object> variables) {
    List<Offer> offers = new ArrayList<>();
    for (String word :
        List.of(
            "help(", "explain(", "explainAll(", "show(", "seek ", "scenario ", "save(", "exit")) {
      offers.add(new Offer(word, ""));
    }
    offers.addAll(held(variables, value -> true));
    return new Suggestions(
        "type how a function begins, or help for all of them by task", "", offers);
  }

  private static Suggestions inCall(
      OpenCall call, Card card, String prefix, Map<String, Object> variables) {
    ParameterNames names = ParameterNames.of(card);
    Optional<Parameter> named = call.name().flatMap(names::parameter);
    if (named.isPresent()) {
      Argument due = new Argument.Plain(named.get());
      return fitting(said(card, named.get()), prefix, values(due, prefix, variables, true));
    }
    List<Parameter> done =
        call.names().stream().flatMap(name -> names.parameter(name).stream()).toList();
    boolean isPositional = done.isEmpty() && call.before().size() < card.arguments().size();
    Argument due = isPositional ? card.arguments().get(call.before().size()) : null;
    List<Offer> offers = new ArrayList<>();
    if (due != null) {
      offers.addAll(values(due, prefix, variables, false));
    }
    List<Parameter> open =
        card.parameters().stream().filter(parameter -> !done.contains(parameter)).toList();
    for (Parameter parameter : open) {
      Optional<String> name =
          prefix.isEmpty()
              ? Optional.of(names.shortest(parameter))
              : names.beginning(prefix, parameter);
      name.ifPresent(each -> offers.add(new Offer(each + " = ", parameter.text())));
    }
    String said =
        due != null
            ? said(card, due)
            : said(card, open.stream().filter(Parameter::isRequired).findFirst().orElse(null));
    return fitting(said, prefix, offers);
  }

  private static Suggestions fitting(String said, String prefix, List<Offer> offers) {
    String wanted = prefix.toLowerCase(Locale.ROOT);
    return new Suggestions(
        said,
        prefix,
        offers.stream()
            .filter(offer -> offer.text().toLowerCase(Locale.ROOT).startsWith(wanted))
            .toList());
  }

  /** The whole call, the argument that is due between arrows, and below it what that is. */
  private static String said(Card card, Argument due) {
    String call =
        card.arguments().stream()
            .map(each -> marked(each.javaName(), each == due))
            .collect(joining(", ", card.call() + "(", ")"));
    return call + "\n  " + due.javaName() + ": " + due.text();
  }

  /** The same for arguments by name; where nothing has to be given, none is marked. */
  private static String said(Card card, Parameter due) {
    ParameterNames names = ParameterNames.of(card);
    String call =
        card.parameters().stream()
            .map(each -> marked(names.shortest(each), each.equals(due)))
            .collect(joining(", ", card.call() + "(", ")"));
    return due == null ? call : call + "\n  " + names.shortest(due) + ": " + due.text();
  }

  private static String marked(String name, boolean isDue) {
    return isDue ? ">" + name + "<" : name;
  }

  private static List<Offer> values(
      Argument due, String prefix, Map<String, Object> variables, boolean isNamed) {
    List<Offer> offers = new ArrayList<>(held(variables, value -> fits(due, value)));
    if (due instanceof Argument.Thing thing) {
      offers.addAll(waysTo(thing.type()));
    } else if (due.parameters().get(0).options() == null) {
      Unit<?> unit = due.parameters().get(0).unit();
      offers.addAll(amounts(unit));
      if (!prefix.isEmpty()) {
        offers.addAll(answersIn(unit));
      }
    } else {
      Parameter word = due.parameters().get(0);
      Stream<String> words =
          isNamed
              ? word.spoken().stream()
              : Arrays.stream(word.options().getEnumConstants()).map(Enum::name);
      words.map(each -> new Offer(each, "")).forEach(offers::add);
    }
    return offers;
  }

  private static List<Offer> held(Map<String, Object> variables, Function<Object, Boolean> fits) {
    return variables.entrySet().stream()
        .filter(variable -> fits.apply(variable.getValue()))
        .map(variable -> new Offer(variable.getKey(), ""))
        .toList();
  }

  private static boolean fits(Argument due, Object value) {
    if (due instanceof Argument.Thing thing) {
      return thing.type().isInstance(value);
    }
    Parameter parameter = due.parameters().get(0);
    if (parameter.options() == null) {
      return value instanceof Figure<?> figure
          && figure.unit().dimension().equals(parameter.unit().dimension());
    }
    return parameter.options().isInstance(value)
        || value instanceof Choice<?> choice && choice.options().equals(parameter.words());
  }

  /** Its named ones and the ways to make one: {@code Nailing.edge(}. */
  private static List<Offer> waysTo(Class<? extends Record> thing) {
    Stream<Offer> ready =
        Arrays.stream(thing.getFields())
            .filter(field -> field.getType() == thing)
            .map(field -> new Offer(field.getName(), ""));
    Stream<Offer> made =
        Arrays.stream(thing.getMethods())
            .filter(method -> isStatic(method) && method.getReturnType() == thing)
            .map(method -> new Offer(thing.getSimpleName() + "." + method.getName() + "(", ""))
            .distinct();
    return Stream.concat(ready, made).toList();
  }

  /** The words that say a number in a unit of this kind: {@code in(}, {@code ft(}. */
  private static List<Offer> amounts(Unit<?> unit) {
    return Arrays.stream(Amounts.class.getMethods())
        .filter(method -> isStatic(method) && isOfOneNumber(method))
        .filter(method -> unitOf(method).dimension().equals(unit.dimension()))
        .map(method -> new Offer(method.getName() + "(", unitOf(method).spoken()))
        .toList();
  }

  private static boolean isOfOneNumber(Method method) {
    return Arrays.equals(method.getParameterTypes(), new Class<?>[] {double.class});
  }

  private static Unit<?> unitOf(Method amount) {
    try {
      return ((Figure<?>) amount.invoke(null, 1.0)).unit();
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Functions whose one answer is of this kind. */
  private static List<Offer> answersIn(Unit<?> unit) {
    return Catalog.shipped().cards().stream()
        .filter(card -> Figure.class.isAssignableFrom(card.method().getReturnType()))
        .filter(card -> card.results().get(0).unit().dimension().equals(unit.dimension()))
        .map(card -> new Offer(card.call() + "(", card.text().summary()))
        .toList();
  }

  private static boolean isStatic(Member member) {
    return Modifier.isStatic(member.getModifiers());
  }

  private static Optional<Card> card(String call) {
    return Catalog.shipped().cards().stream().filter(card -> card.call().equals(call)).findFirst();
  }

  private static String summary(String continuation) {
    return card(continuation.replaceAll("\\(.*", "")).map(card -> card.text().summary()).orElse("");
  }
}

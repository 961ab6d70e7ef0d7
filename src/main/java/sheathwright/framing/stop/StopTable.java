package sheathwright.framing.stop;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/**
 * Who decides about each finding that stops a repair, by what source, what may go on meanwhile, and
 * how it is said to each reader: all of it from one file.
 */
public final class StopTable {

  private static final String DECIDES = "decides";
  private static final String MEANWHILE = "meanwhile";
  private static final String CREW = "crew";
  private static final String INSPECTOR = "inspector";
  private static final String PLAINLY = "plainly";
  private static final String SOURCE = "source";
  private static final String ORDER = "order";

  private static final Table FILE =
      Published.table("trade/undated/stop-findings.csv", "stop_findings", "what stops", 1);

  private static final Table DECIDING =
      table("", "What stops: what may go on, and who decides", MEANWHILE, DECIDES, ORDER);
  private static final Table TO_CREW = table("_crew", "What stops: to the crew", CREW);
  private static final Table TO_INSPECTOR =
      table("_inspector", "What stops: for the inspector and the office", INSPECTOR, SOURCE);
  private static final Table TO_HOMEOWNER =
      table("_plainly", "What stops: in plain words", PLAINLY);

  private StopTable() {}

  private static Table table(String name, String title, String... columns) {
    return new Table(
        FILE.name() + name,
        title,
        FILE.keys(),
        List.of(columns),
        FILE.rows().stream()
            .map(
                row ->
                    Stream.concat(
                            Stream.of(row.get(0)),
                            Arrays.stream(columns).map(column -> value(row, column)))
                        .toList())
            .toList(),
        FILE.source(),
        FILE.notes());
  }

  private static String value(List<String> row, String column) {
    if (column.equals(ORDER)) {
      return decider(row).order().plain();
    }
    return column.equals(SOURCE) ? source(row).toString() : at(row, column);
  }

  private static String at(List<String> row, String column) {
    return row.get(FILE.keys().size() + FILE.columns().indexOf(column));
  }

  private static Decider decider(List<String> row) {
    String who = at(row, DECIDES);
    return Arrays.stream(Decider.values())
        .filter(decider -> decider.word().equals(who))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("nobody is called \"%s\"".formatted(who)));
  }

  private static Source source(List<String> row) {
    String text = at(row, SOURCE);
    String mark = at(row, "mark");
    return switch (mark) {
      case "common practice" -> Source.COMMON_PRACTICE;
      case "derived" -> Source.derived(text);
      case "secondary source" -> Source.secondHand(text);
      case "from memory" -> Source.fromMemory(text);
      default -> throw new IllegalStateException("nobody knows the mark \"%s\"".formatted(mark));
    };
  }

  /** What the office, the crew and the inspector are shown. */
  public static List<Table> forTheTrade() {
    return List.of(DECIDING, TO_CREW, TO_INSPECTOR);
  }

  /** What a homeowner is shown: nothing of how a source was had. */
  public static List<Table> forTheHomeowner() {
    return List.of(DECIDING, TO_HOMEOWNER);
  }

  /** Who decides about a finding. */
  static Choice<String> decides(OneOf<StopFinding> finding) {
    return DECIDING.words(DECIDES, finding);
  }

  /** What may go on until then. */
  static Choice<String> meanwhile(OneOf<StopFinding> finding) {
    return DECIDING.words(MEANWHILE, finding);
  }

  /** The place of who decides among all who do; the greatest stands at the head of a list. */
  static Figure<Ratio> order(OneOf<StopFinding> finding) {
    return DECIDING.number(Units.RATIO, ORDER, finding);
  }

  /** The sentence for whoever stands on the roof. */
  static Choice<String> toCrew(OneOf<StopFinding> finding) {
    return TO_CREW.words(CREW, finding);
  }

  /** The sentence for the inspector and the office. */
  static Choice<String> toInspector(OneOf<StopFinding> finding) {
    return TO_INSPECTOR.words(INSPECTOR, finding);
  }

  /** The rule or practice, with how it was had. */
  static Choice<String> sourceOf(OneOf<StopFinding> finding) {
    return TO_INSPECTOR.words(SOURCE, finding);
  }

  /** The sentence for whoever lives there. */
  static Choice<String> toHomeowner(OneOf<StopFinding> finding) {
    return TO_HOMEOWNER.words(PLAINLY, finding);
  }
}

package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sheathwright.job.file.Manifest;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.Taking;

/**
 * A workbook of ours that came back, held against what went out.
 *
 * @param document which one it is; empty for a draft
 * @param how what it was held against, in words
 * @param findings everything that is not as it was written
 * @param joint what all changes together do to the total
 * @param single what they do one by one, added up
 * @param taken what whoever held the file was free to change, and did
 * @param signed what was typed on its lines to sign on
 */
public record Audit(
    String document,
    String how,
    List<Finding> findings,
    OptionalDouble joint,
    OptionalDouble single,
    List<Taking.Input> taken,
    List<Signed> signed) {

  /**
   * What was typed on a line to sign on.
   *
   * @param who is to sign there
   * @param words that stand there now
   */
  public record Signed(String who, String words) {}

  /**
   * Holds a file against what was written.
   *
   * @param name of the file, for messages
   * @param job that it belongs to, if that is known
   * @param recalculates whether every formula is worked out, even where nothing was changed
   * @throws sheathwright.job.table.ProblemsException if it cannot be read, or there is nothing to
   *     hold it against
   */
  public static Audit of(String name, byte[] file, Optional<JobFolder> job, boolean recalculates) {
    Reading now = BookReading.of(name, file);
    Original original = Original.of(name, file, now, job);
    Comparison comparison = Comparison.of(original.reading(), now);
    Effects effects = Effects.of(original.reading(), comparison, recalculates);
    List<Finding> findings = new ArrayList<>();
    original.doubt().ifPresent(findings::add);
    findings.addAll(effects.findings());
    return new Audit(
        original.reading().document(),
        original.how(),
        List.copyOf(findings),
        effects.joint(),
        effects.single(),
        taken(comparison),
        signed(original.reading(), comparison));
  }

  /**
   * Holds one file against what another of ours says was written into it.
   *
   * @throws sheathwright.job.table.ProblemsException if either cannot be read
   */
  public static Audit between(byte[] written, byte[] file) {
    Reading was = ManifestReading.of(Manifest.in(written).orElseThrow()).orElseThrow();
    Comparison comparison = Comparison.of(was, BookReading.of("file", file));
    Effects effects = Effects.of(was, comparison, false);
    return new Audit(
        was.document(),
        "another file",
        effects.findings(),
        effects.joint(),
        effects.single(),
        taken(comparison),
        signed(was, comparison));
  }

  private static List<Signed> signed(Reading was, Comparison comparison) {
    List<Signed> signed = new ArrayList<>();
    for (Finding finding : comparison.findings()) {
      if (finding.name().isEmpty() && finding.verdict() == Verdict.FOLLOW) {
        Change change = comparison.changes(finding).get(0);
        String who = was.panes().get(change.sheet()).at(change.row(), 0).said();
        signed.add(new Signed(who, change.now().said()));
      }
    }
    return signed;
  }

  private static List<Taking.Input> taken(Comparison comparison) {
    List<Taking.Input> taken = new ArrayList<>();
    for (Finding finding : comparison.findings()) {
      boolean isNamed = !finding.name().isEmpty(); // else it is a signature
      if (isNamed && finding.verdict() == Verdict.FOLLOW) {
        Change change = comparison.changes(finding).get(0);
        Optional<Integer> line =
            comparison
                .judgment()
                .names()
                .column(change.sheet(), change.row(), change.column())
                .filter(column -> column.getValue().equals(finding.name()))
                .map(column -> change.row() - column.getKey().row());
        taken.add(
            new Taking.Input(
                finding.name(),
                line.orElse(0),
                line.isPresent(),
                change.was().said(),
                change.now().said()));
      }
    }
    return taken;
  }

  /** Whether nobody goes on with the file before something is cleared up. */
  public boolean stops() {
    return findings.stream().anyMatch(finding -> finding.verdict().stops());
  }

  /** What was found, in a few sentences. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    words.add(
        (document.isEmpty() ? "A file that never went out" : document) + ", held against " + how);
    if (findings.isEmpty()) {
      words.add("nothing differs from what was written");
      return words;
    }
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    findings.forEach(finding -> counts.merge(finding.verdict(), 1, Integer::sum));
    counts.forEach(
        (verdict, count) ->
            words.add((count == 1 ? "1 thing: " : count + " things: ") + verdict.words()));
    if (joint.isPresent()) {
      words.add(
          "all changes together: %s on the total; %s"
              .formatted(
                  Effects.money(joint.getAsDouble()),
                  single.isPresent()
                      ? "one by one and added up: " + Effects.money(single.getAsDouble())
                      : "they are too many to be told apart one by one"));
    }
    words.add(
        stops()
            ? "do not go on with this file before that is cleared up"
            : "nothing in it stands against going on");
    return words;
  }

  /**
   * Each finding because of which nobody signs, as one line: what stops, or cannot be vouched for.
   */
  public List<String> againstSigning() {
    return findings.stream()
        .filter(finding -> finding.verdict().stops() || finding.verdict() == Verdict.CANNOT_VOUCH)
        .map(Audit::line)
        .toList();
  }

  /** Each finding as one line. */
  public List<String> lines() {
    return findings.stream().map(Audit::line).toList();
  }

  private static String line(Finding finding) {
    StringBuilder line = new StringBuilder();
    line.append(finding.sheet().isEmpty() ? "the file" : finding.sheet());
    if (!finding.cell().isEmpty()) {
      line.append('!').append(finding.cell());
    }
    if (!finding.name().isEmpty()) {
      line.append(" (").append(finding.name()).append(')');
    }
    line.append(", ").append(finding.kind());
    if (!finding.was().isEmpty()) {
      line.append(", was ").append(finding.was());
    }
    if (!finding.now().isEmpty() || !finding.cell().isEmpty()) {
      line.append(", now ").append(finding.now().isEmpty() ? "nothing" : finding.now());
    }
    line.append(": ").append(finding.verdict().words());
    if (!finding.words().isEmpty()) {
      line.append("; ").append(finding.words());
    }
    finding.effect().ifPresent(effect -> line.append("; ").append(Effects.money(effect)));
    return line.toString();
  }
}

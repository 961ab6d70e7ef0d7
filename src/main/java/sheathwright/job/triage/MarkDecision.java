package sheathwright.job.triage;

import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Traced;

/**
 * What is done about a mark.
 *
 * @param action replace, cover, support, relieve, refasten, dry, lift, watch or stop, as it was
 *     decided for what the tables say: what is cut and counted follows from it
 * @param reason in a sentence: by the rules, or that the crew decided
 * @param also the other tests that speak
 * @param live the same as it follows, cell by cell
 */
public record MarkDecision(
    Choice<String> action, Choice<String> reason, Choice<String> also, Live live) {

  /**
   * A decision that follows its cells.
   *
   * @param evidence what it is made from, by column; what nobody measured may still be given
   * @param shared what the evidence of all marks is held against
   * @param byRules what the rules say
   * @param action what is done: by the rules, or as somebody typed
   * @param reason why
   */
  public record Live(
      Map<String, Traced> evidence,
      List<Traced> shared,
      List<Traced> byRules,
      Choice<String> action,
      Choice<String> reason) {}
}

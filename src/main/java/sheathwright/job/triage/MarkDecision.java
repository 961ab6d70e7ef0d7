package sheathwright.job.triage;

import sheathwright.figure.Choice;
import sheathwright.sheathing.triage.SheetAction;

/**
 * What is done about a mark, as it was decided for what the tables say now.
 *
 * @param action replace, cover, support, relieve, refasten, dry, lift, watch or stop
 * @param reason in a sentence: by the rules, or that the crew decided
 * @param also the other tests that speak
 * @param byRules what the rules alone say, live
 */
public record MarkDecision(
    Choice<String> action, Choice<String> reason, Choice<String> also, SheetAction byRules) {}

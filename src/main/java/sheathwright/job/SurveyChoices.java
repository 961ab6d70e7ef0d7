package sheathwright.job;

import sheathwright.figure.Reading;
import sheathwright.figure.Solution;
import sheathwright.job.SurveyFields.Flatness;
import sheathwright.leveling.target.TargetRules;

/**
 * What was chosen for all planes of a survey.
 *
 * @param shape what the rafters are brought to
 * @param flatness how flat they are to be
 * @param solution rests on both
 */
record SurveyChoices(TargetRules.Shape shape, Flatness flatness, Solution solution) {

  static SurveyChoices of(Job job) {
    Reading reading = new Reading();
    TargetRules.Shape shape =
        reading.word("what the rafters are brought to", job.fact(SurveyFields.TARGET));
    Flatness flatness = reading.word("the flatness required", job.fact(SurveyFields.FLATNESS));
    return new SurveyChoices(shape, flatness, reading.solution("leveling_choices"));
  }
}

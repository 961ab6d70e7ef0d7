package sheathwright.cli;

import picocli.CommandLine.Option;
import sheathwright.job.table.Moment;

/** When a step of a job's life is taken. */
abstract class StepDay {

  @Option(
      names = "--on",
      paramLabel = "DATE",
      required = true,
      converter = MomentConverter.class,
      description = "when: 2027-05-12, or with the time 2027-05-12T14:30")
  private Moment on;

  final Moment on() {
    return on;
  }
}

package sheathwright.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import sheathwright.cli.pipe.Voice;
import sheathwright.job.Estimate;
import sheathwright.life.doubt.Doubts;

/** What a job comes to, as {@code quote} and {@code check} say it. */
record Outcome(Estimate estimate) {

  /** Says the price and the rafters. */
  void say(CommandSpec command) {
    Voice.say(command, "the homeowner pays " + total());
    Voice.say(command, "the rafters: " + estimate.framing().decision());
  }

  /** Says what stops, is asked about or fails. */
  void warn(PrintWriter err) {
    if (isStopped()) {
      err.println(
          estimate.framing().decision() + "; until then nobody repairs the rafters by this quote");
      stops().forEach(err::println);
    }
    questions().forEach(each -> err.println("question: " + each));
    estimate.ties().stream()
        .filter(tie -> !tie.holds().holds())
        .forEach(tie -> err.println("check: " + tie.what()));
  }

  /** The price and the most that it can come to. */
  String total() {
    return estimate.total() + ", at worst " + estimate.quote().worstCase();
  }

  /** What stops the repair of the rafters, a line each. */
  List<String> stops() {
    return isStopped() ? estimate.framing().stops().lines() : List.of();
  }

  /** What is allowed in the job's tables but hardly meant, a line each. */
  List<String> questions() {
    return Doubts.of(estimate).lines();
  }

  private boolean isStopped() {
    return !estimate.stopTie().holds().holds();
  }
}

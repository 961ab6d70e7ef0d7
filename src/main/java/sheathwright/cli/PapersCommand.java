package sheathwright.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Voice;
import sheathwright.job.Estimate;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.PapersNow;
import sheathwright.life.record.Step;
import sheathwright.life.record.Writing;
import sheathwright.workbook.paper.InspectionRecordBook;
import sheathwright.workbook.paper.MakerRecordBook;
import sheathwright.workbook.paper.OrderListBook;
import sheathwright.workbook.told.Photos;

/** Writes what goes to the supplier, the building official and the covering's maker. */
@Command(
    name = "papers",
    mixinStandardHelpOptions = true,
    description = {
      "Write what a job's other readers ask for, without any price: order-list.xlsx for the supplier, once the job is quoted;"
          + " maker-record.xlsx for the covering's maker, if the job says what he asks for; inspection-record.xlsx for the"
          + " building official, once the covering is off.",
      "Each is written from the job's tables as they stand; nothing in the job changes."
    },
    footerHeading = "%nExamples:%n",
    footer = {"  sheathwright papers my-job", "  sheathwright papers my-job -o out --force"})
final class PapersCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "the job's folder")
  private Path folder;

  @Option(
      names = "-o",
      paramLabel = "FOLDER",
      description = "where to write; else into the job's own folder")
  private Path output;

  @Option(names = "--force", description = "replace the workbooks there if they exist")
  private boolean force;

  @Override
  public Integer call() {
    JobFolder job = JobFolder.in(folder);
    PapersNow now = new PapersNow(job);
    Path place = output == null ? folder : output;
    Writing writing = new Writing(folder);
    Map<String, byte[]> papers = papers(now, Photos.of(job.job(), folder));
    papers.forEach((file, bytes) -> writing.copied(place.resolve(file), bytes, force));
    writing.write();
    papers.keySet().forEach(file -> say("wrote " + place.resolve(file)));
    if (!now.allow(Step.INSPECTION_RECORD)) {
      say("inspection-record.xlsx is written once the covering is off: opened_on in job.csv");
    }
    return 0;
  }

  private static Map<String, byte[]> papers(PapersNow now, Photos photos) {
    Estimate estimate = now.estimate();
    Map<String, byte[]> papers = new LinkedHashMap<>();
    papers.put("order-list.xlsx", OrderListBook.of(estimate).bytes());
    if (now.allow(Step.MAKER_RECORD) && MakerRecordBook.isAsked(estimate)) {
      papers.put("maker-record.xlsx", MakerRecordBook.of(estimate, photos).bytes());
    }
    if (now.allow(Step.INSPECTION_RECORD)) {
      papers.put("inspection-record.xlsx", InspectionRecordBook.of(estimate, photos).bytes());
    }
    return papers;
  }

  private void say(String line) {
    Voice.say(spec, line);
  }
}

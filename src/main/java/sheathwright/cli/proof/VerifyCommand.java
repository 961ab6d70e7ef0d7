package sheathwright.cli.proof;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.catalog.Catalog;
import sheathwright.cli.pipe.Dash;
import sheathwright.cli.pipe.JsonRows;
import sheathwright.cli.pipe.Today;
import sheathwright.cli.pipe.Watch;
import sheathwright.figure.RefusedException;
import sheathwright.job.file.NewFile;
import sheathwright.job.solve.PlanProof;
import sheathwright.proof.CheckedFolder;
import sheathwright.proof.OfficeCases;
import sheathwright.proof.Tested;
import sheathwright.workbook.proof.RecordBook;
import sheathwright.workbook.proof.Verification;
import sheathwright.workbook.proof.VerificationPage;

/** Says what was checked, and checks it again where the program runs. */
@Command(
    name = "verify",
    mixinStandardHelpOptions = true,
    description = {
      "Check the program where it runs, without a network: fingerprints of the program and its tables, every certified case,"
          + " three workbooks worked out anew, and two wrong values that must be found. Exit status 0 if all holds, else 1.",
      "With a function, tell how it was checked. With a table of your engineer's own cases, run them, and keep them in the folder"
          + " checked beside firm.csv: from then on verify runs them with ours.",
      "With a plan of cuts that solve wrote with certificate=FILE, confirm from the file alone, without any search, that every piece"
          + " is cut and that no plan takes less."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright verify",
      "  sheathwright verify --report record.xlsx",
      "  sheathwright verify nail_withdrawal",
      "  sheathwright verify mine.csv",
      "  sheathwright verify plan.csv"
    })
public final class VerifyCommand implements Callable<Integer> {

  private static final int WRONG = 1;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "FUNCTION|TABLE",
      description =
          "a function's name, a plan, or a CSV file of cases, its columns as docs/verification.md says; - for standard input")
  private String subject;

  @Option(
      names = "--office",
      paramLabel = "FOLDER",
      description = "a folder of the office whose own cases are meant; else the one you are in")
  private Path office;

  @Option(
      names = "--report",
      paramLabel = "FILE",
      description = "write a record to sign, an .xlsx file")
  private Path report;

  @Option(names = "--markdown", description = "write every function's evidence as one document")
  private boolean markdown;

  @Option(names = "--json", description = "write an array of objects, one for each function")
  private boolean isJson;

  @Option(names = "--force", description = "replace the record, or a table of cases that is kept")
  private boolean force;

  @Override
  public Integer call() throws IOException {
    if (subject != null && (report != null || markdown)) {
      throw new ParameterException(
          spec.commandLine(),
          "%s is of everything; leave %s away"
              .formatted(report != null ? "--report" : "--markdown", subject));
    }
    if (markdown) {
      spec.commandLine().getOut().println(VerificationPage.text().stripTrailing());
      return 0;
    }
    if (subject == null) {
      return everything();
    }
    return isTable() ? table() : function();
  }

  private boolean isTable() {
    return Dash.is(Path.of(subject)) || subject.toLowerCase(Locale.ROOT).endsWith(".csv");
  }

  private int everything() throws IOException {
    Optional<NewFile> record = Optional.ofNullable(report).map(this::record);
    List<OfficeCases> own =
        CheckedFolder.above(folder()).map(CheckedFolder::cases).orElse(List.of());
    Watch watch = Watch.over(spec);
    Verification all = Verification.of(own, watch::show);
    watch.clear();
    if (isJson) {
      JsonRows.write(spec.commandLine().getOut(), VerifiedRows.of(all.tested(), own));
      VerifiedLines.wrong(all).forEach(spec.commandLine().getErr()::println);
    } else {
      VerifiedLines.of(all).forEach(spec.commandLine().getOut()::println);
    }
    record.ifPresent(file -> file.write(RecordBook.bytes(all, Today.day())));
    return all.holds() ? 0 : WRONG;
  }

  private NewFile record(Path file) {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw new ParameterException(
          spec.commandLine(), file + " must end in .xlsx: the record is a workbook");
    }
    return NewFile.at(file, force);
  }

  private Path folder() {
    return office == null ? Path.of("") : office;
  }

  private int function() throws IOException {
    Tested tested;
    try {
      tested = Tested.of(Catalog.shipped().named(subject));
    } catch (RefusedException unknown) {
      throw new ParameterException(spec.commandLine(), unknown.getMessage());
    }
    if (isJson) {
      JsonRows.write(spec.commandLine().getOut(), VerifiedRows.of(List.of(tested), List.of()));
    } else {
      VerifiedLines.of(tested).forEach(spec.commandLine().getOut()::println);
    }
    return told(tested.problems()) ? WRONG : 0;
  }

  private int table() throws IOException {
    OwnTable table = OwnTable.read(Path.of(subject));
    if (PlanProof.is(table.read())) {
      return plan(PlanProof.of(table.read()));
    }
    OfficeCases cases = OfficeCases.of(table.read());
    if (isJson) {
      JsonRows.write(spec.commandLine().getOut(), VerifiedRows.of(List.of(), List.of(cases)));
    } else {
      VerifiedLines.of(cases).forEach(spec.commandLine().getOut()::println);
    }
    boolean isWrong = told(cases.problems());
    table.keep(Optional.ofNullable(office), force, spec);
    return isWrong ? WRONG : 0;
  }

  private int plan(PlanProof proof) throws IOException {
    if (isJson) {
      JsonRows.write(spec.commandLine().getOut(), VerifiedPlan.named(proof));
    } else {
      VerifiedPlan.of(proof).forEach(spec.commandLine().getOut()::println);
    }
    return proof.holds() ? 0 : WRONG;
  }

  private boolean told(List<?> problems) {
    problems.forEach(spec.commandLine().getErr()::println);
    return !problems.isEmpty();
  }
}

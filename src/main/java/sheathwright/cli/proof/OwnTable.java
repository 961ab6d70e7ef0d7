package sheathwright.cli.proof;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import sheathwright.cli.pipe.Dash;
import sheathwright.cli.pipe.Voice;
import sheathwright.job.table.CsvFile;
import sheathwright.proof.CheckedFolder;

/**
 * A table that was named on the command line: an engineer's own cases, or a plan of cuts.
 *
 * @param file where it lies; a dash for standard input
 * @param bytes all of it, read once
 * @param read its lines
 */
record OwnTable(Path file, byte[] bytes, CsvFile read) {

  /**
   * Reads it.
   *
   * @throws sheathwright.job.table.ProblemsException if it cannot be read, with all that is wrong
   */
  static OwnTable read(Path file) throws IOException {
    if (!Dash.is(file)) {
      CsvFile read = CsvFile.read(file);
      return new OwnTable(file, Files.readAllBytes(file), read);
    }
    byte[] bytes = Dash.bytes(file);
    CsvFile read = CsvFile.read(new ByteArrayInputStream(bytes), Dash.INPUT);
    return new OwnTable(file, bytes, read);
  }

  /**
   * Keeps it with the office's tables, where there is an office, and says so.
   *
   * @param office a folder of the office, if one is named; else the one that the table lies in, or
   *     the one that somebody is in
   */
  void keep(Optional<Path> office, boolean mayReplace, CommandSpec spec) {
    if (Dash.is(file)) {
      Voice.say(spec, "not kept: what comes from standard input has no name");
      return;
    }
    Path beside = file.toAbsolutePath().normalize().getParent();
    Optional<CheckedFolder> folder =
        office.isPresent()
            ? office.flatMap(CheckedFolder::above)
            : CheckedFolder.above(beside).or(() -> CheckedFolder.above(Path.of("")));
    if (folder.isEmpty()) {
      Voice.say(
          spec,
          "not kept: there is no firm.csv in this folder or above; name the office's with --office");
    } else if (!folder.get().holds(file)) {
      Path kept = folder.get().keep(String.valueOf(file.getFileName()), bytes, mayReplace);
      Voice.say(spec, "kept as " + kept + "; verify runs it from now on");
    }
  }
}

package sheathwright.year;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import picocli.CommandLine;
import sheathwright.cli.Main;
import sheathwright.year.disk.Disk;

/** The commands themselves, with every document that they write. */
final class Commands implements Desk {

  @Override
  public Answer run(Disk disk, String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line =
        Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true), words);
    line.registerConverter(Path.class, disk::path);
    int status = line.execute(words);
    return new Answer(status, out.toString(), err.toString());
  }
}

package sheathwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A demo job with an option to choose, whose quote was issued; made once, copied for each test. */
final class IssuedJob {

  private static final Path DEMO = Path.of("demo-data", "quince-hollow");

  private IssuedJob() {}

  /** A copy of it. */
  static LifeFolder copy(Path once, Path into) throws IOException {
    Path issued = once.resolve("issued");
    if (Files.notExists(issued)) {
      LifeFolder.of(DEMO, issued)
          .write("options.csv", "option,item,usd,chosen\n1,New gutter boards,640,\n");
      new LifeFolder(issued).done("quote", "--issue", "--on", "2027-05-04");
    }
    LifeFolder job = LifeFolder.of(issued, into);
    Path sent = Files.createDirectories(into.resolve("sent"));
    try (Stream<Path> files = Files.list(issued.resolve("sent"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".xlsx")).toList()) {
        Files.copy(file, sent.resolve(file.getFileName()));
      }
    }
    return job;
  }
}

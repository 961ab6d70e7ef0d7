package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A job's folder in which commands are tried one after the other. */
record LifeFolder(Path path) {

  /** The tables of a demo job, in a folder of their own. */
  static LifeFolder of(Path demo, Path folder) {
    try {
      Files.createDirectories(folder);
      try (Stream<Path> tables = Files.list(demo)) {
        for (Path table : tables.filter(file -> file.toString().endsWith(".csv")).toList()) {
          Files.copy(table, folder.resolve(table.getFileName()));
        }
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return new LifeFolder(folder);
  }

  /** Runs a command on it. */
  CommandRun run(String command, Object... options) {
    return CommandRun.of(
        Stream.concat(Stream.of(command, path), Stream.of(options)).toArray(Object[]::new));
  }

  /** Runs a command that must be done. */
  CommandRun done(String command, Object... options) {
    CommandRun ran = run(command, options);
    assertThat(ran.status()).as(ran.err()).isZero();
    return ran;
  }

  /** Runs a command that must be refused with one line, and change nothing. */
  String refused(String command, Object... options) {
    Map<String, String> before = bytes();
    CommandRun ran = run(command, options);
    assertThat(ran.status()).as(ran.out()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines()).hasSize(1);
    assertThat(bytes()).isEqualTo(before);
    return ran.err().strip();
  }

  /** A fact written behind all others, as the office writes it. */
  void fact(String key, String value) {
    String kept =
        text("job.csv")
            .lines()
            .filter(line -> !line.startsWith(key + ","))
            .reduce("", (all, line) -> all + line + "\n");
    write("job.csv", kept + key + "," + value + ",\n");
  }

  void write(String file, String text) {
    try {
      Files.writeString(path.resolve(file), text);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  void replace(String file, String text, String other) {
    assertThat(text(file)).as("what the test changes").contains(text);
    write(file, text(file).replace(text, other));
  }

  String text(String file) {
    return new String(bytes(file), StandardCharsets.UTF_8);
  }

  byte[] bytes(String file) {
    try {
      return Files.readAllBytes(path.resolve(file));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Every file and folder below, each file with what is in it. */
  Map<String, String> bytes() {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> entries = Files.walk(path)) {
      for (Path entry : entries.toList()) {
        all.put(
            path.relativize(entry).toString(),
            Files.isDirectory(entry)
                ? "a folder"
                : new String(Files.readAllBytes(entry), StandardCharsets.ISO_8859_1));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return all;
  }

  List<String> lines(String file) {
    return text(file).lines().toList();
  }
}

package sheathwright.hard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.job.file.Unpacked;
import sheathwright.job.table.ProblemsException;

/**
 * Workbooks made for mischief, before every command that reads one: refused in plain words, or read
 * as if the mischief were not there. {@code -Dhostile=all} tries the heavy ones too, and prints
 * what each takes; {@code src/build/hostile.sh} does so in 256 MB.
 */
class HostileTest {

  private static final String ASKED = System.getProperty("hostile", "");
  private static final boolean IS_LONG = !ASKED.isEmpty();

  /** A command that reads a workbook, and a good one for it. */
  enum Command {
    QUOTE("sent/QH-01-issue-1-estimate.xlsx", "quote", "FILE", "--force"),
    TAKE_IN("crew.xlsx", "take-in", "JOB", "FILE"),
    AUDIT("sent/QH-01-issue-1.xlsx", "audit", "FILE", "--job", "JOB"),
    COMPARE("sent/QH-01-issue-1.xlsx", "compare", "GOOD", "FILE"),
    AGREE("sent/QH-01-issue-1.xlsx", "agree", "JOB", "--on", "2027-05-12", "--returned", "FILE"),
    LETTERHEAD("letterhead.xlsx", "quote", "JOB", "--letterhead", "FILE", "--force");

    private final String good;
    private final List<String> words;

    Command(String good, String... words) {
      this.good = good;
      this.words = List.of(words);
    }

    Object[] on(Path job, Path file) {
      Map<String, Path> places = Map.of("JOB", job, "FILE", file, "GOOD", job.resolve(good));
      return words.stream()
          .map(word -> places.containsKey(word) ? places.get(word).toString() : word)
          .toArray();
    }
  }

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void aHostileWorkbook_doesNoHarm(Hostile hostile) throws IOException {
    assumeTrue(
        IS_LONG
            ? ASKED.equals("all") || ASKED.contains(hostile.name())
            : hostile.kind() != Hostile.Kind.HEAVY,
        "src/build/hostile.sh asks for it");
    for (Command command : asked(hostile)) {
      Path job = Sent.once().copy(folder.resolve(command.name()));
      byte[] good = Files.readAllBytes(job.resolve(command.good));
      Path file = job.resolve("hostile.xlsx");
      Files.write(file, hostile.of(good));
      long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      Ran ran = Ran.in(job, command.on(job, file));
      long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began;
      boolean isRefused =
          hostile.kind() == Hostile.Kind.REFUSED
              || hostile.kind() == Hostile.Kind.NAMED && command != Command.COMPARE;
      if (isRefused) {
        assertThat(ran.status()).as("%s said %s%s", command, ran.out(), ran.err()).isEqualTo(3);
      }
      if (IS_LONG) {
        System.out.printf(
            "%s, %s: status %d, %.2f s of CPU: %s%n",
            hostile, command, ran.status(), took / 1e9, ran.err().lines().findFirst().orElse(""));
      }
    }
  }

  /** In the gate two for each, so that every command meets some. */
  private static List<Command> asked(Hostile hostile) {
    List<Command> all = List.of(Command.values());
    int first = hostile.ordinal() % all.size();
    return IS_LONG ? all : List.of(all.get(first), all.get((first + 1) % all.size()));
  }

  @Test
  void aDocumentTypeInAnyPart_isRefused() throws IOException {
    for (Command command : Command.values()) {
      byte[] good = Files.readAllBytes(Sent.once().folder().resolve(command.good));
      Stream<String> parts =
          FileFaults.parts(good).keySet().stream().filter(part -> part.matches(".*\\.(xml|rels)"));
      for (String part : parts.toList()) {
        byte[] hostile = Hostile.changed(good, part, Hostile::withEntities);
        assertThatThrownBy(() -> Unpacked.parts("ours.xlsx", hostile, any -> true))
            .isInstanceOf(ProblemsException.class)
            .hasMessage("ours.xlsx: its part %s declares entities of its own; save it anew", part);
      }
    }
  }
}

package sheathwright.job.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.table.ProblemsException;

class NewFilesTest {

  private static final long NO_SUCH_PROCESS = 999_999_999_999L;

  @TempDir private Path folder;

  @Test
  void newFiles_areAllWritten() throws IOException {
    write("estimate.xlsx", "old estimate");
    new NewFiles()
        .with(at("estimate.xlsx"), bytes("new"))
        .with(at("quote.xlsx"), bytes("q"))
        .write();
    assertThat(text("estimate.xlsx")).isEqualTo("new");
    assertThat(text("quote.xlsx")).isEqualTo("q");
    assertThat(names()).containsExactlyInAnyOrder("estimate.xlsx", "quote.xlsx");
  }

  @Test
  void newFiles_areAsTheyWereWhereTheDiskIsFull() throws IOException {
    write("estimate.xlsx", "old estimate");
    write("quote.xlsx", "old quote");
    NewFiles files =
        new NewFiles()
            .with(at("estimate.xlsx"), bytes("new"))
            .with(
                at("quote.xlsx"),
                stream -> {
                  stream.write(bytes("ne"));
                  throw new IOException("No space left on device");
                });
    assertThatThrownBy(files::write)
        .isInstanceOf(ProblemsException.class)
        .hasMessage(
            folder.resolve("quote.xlsx") + ": it cannot be written: No space left on device");
    assertBothAreOld();
  }

  /** A folder that came meanwhile to stand where the second file goes cannot be replaced. */
  @Test
  void newFiles_goBackWhereTheSecondCannotBePutInPlace() throws IOException {
    write("estimate.xlsx", "old estimate");
    FileTime stood = FileTime.from(Instant.parse("2024-05-01T10:00:00Z"));
    Files.setLastModifiedTime(folder.resolve("estimate.xlsx"), stood);
    NewFiles files =
        new NewFiles().with(at("estimate.xlsx"), bytes("new")).with(at("quote.xlsx"), bytes("new"));
    Path inTheWay = Files.createDirectory(folder.resolve("quote.xlsx"));
    Files.writeString(inTheWay.resolve("kept.txt"), "kept");
    assertThatThrownBy(files::write)
        .isInstanceOf(ProblemsException.class)
        .hasMessageStartingWith(inTheWay + ": it cannot be written: ");
    assertThat(text("estimate.xlsx")).isEqualTo("old estimate");
    assertThat(Files.getLastModifiedTime(folder.resolve("estimate.xlsx"))).isEqualTo(stood);
    assertThat(names()).containsExactlyInAnyOrder("estimate.xlsx", "quote.xlsx");
  }

  @Test
  void newFiles_areGoneAgainWhereTheSecondCannotBePutInPlace() throws IOException {
    NewFiles files =
        new NewFiles().with(at("estimate.xlsx"), bytes("new")).with(at("quote.xlsx"), bytes("new"));
    Path inTheWay = Files.createDirectory(folder.resolve("quote.xlsx"));
    Files.writeString(inTheWay.resolve("kept.txt"), "kept");
    assertThatThrownBy(files::write).isInstanceOf(ProblemsException.class);
    assertThat(names()).containsExactly("quote.xlsx");
  }

  @Test
  void leftovers_ofADeadRunAreClearedByTheNextInTheFolder() throws IOException {
    write(".estimate.xlsx." + NO_SUCH_PROCESS + "-1.part", "half");
    write(".roof.xlsx." + NO_SUCH_PROCESS + "-3.part", "half");
    at("quote.xlsx");
    assertThat(names()).isEmpty();
  }

  @Test
  void leftovers_areOnlyWhatOurRunsWrite() throws IOException {
    String[] foreign = {".quote.xlsx.part", ".letter.odt.4711.part", "quote.xlsx.4711-1.part"};
    for (String name : foreign) {
      write(name, "somebody's");
    }
    at("quote.xlsx");
    assertThat(names()).containsExactlyInAnyOrder(foreign);
  }

  @Test
  void leftovers_ofARunThatLivesAreLeftUnlessTheyAreOlderThanADay() throws IOException {
    Process alive = new ProcessBuilder("sleep", "60").start();
    try {
      String young = ".quote.xlsx." + alive.pid() + "-1.part";
      String old = ".quote.xlsx." + alive.pid() + "-2.part";
      write(young, "being written");
      write(old, "of a process that had the same number");
      Instant longAgo = Instant.now().minus(Duration.ofHours(25));
      Files.setLastModifiedTime(folder.resolve(old), FileTime.from(longAgo));
      at("quote.xlsx").write(bytes("new"));
      assertThat(names()).containsExactlyInAnyOrder("quote.xlsx", young);
    } finally {
      alive.destroyForcibly();
    }
  }

  /** As in a container, where every run has the same number. */
  @Test
  void leftovers_ofADeadRunWithOurOwnNumberAreCleared() throws IOException {
    write(".quote.xlsx." + ProcessHandle.current().pid() + "-0.part", "half");
    at("quote.xlsx");
    assertThat(names()).isEmpty();
  }

  @Test
  void twoRunsAtOnce_leaveEachOthersDraftsAlone() throws IOException {
    NewFile first = at("estimate.xlsx");
    first.write(
        stream -> {
          stream.write(bytes("fir"));
          at("estimate.xlsx").write(bytes("second"));
          stream.write(bytes("st"));
        });
    assertThat(text("estimate.xlsx")).isEqualTo("first");
    assertThat(names()).containsExactly("estimate.xlsx");
  }

  /** A run that died between its two moves: what it had kept says that both drafts were whole. */
  @Test
  void leftovers_ofARunThatDiedBetweenTwoMovesAreFinished() throws IOException {
    diedBetweenTheMoves();
    at("other.xlsx");
    assertThat(text("estimate.xlsx")).isEqualTo("new estimate");
    assertThat(text("quote.xlsx")).isEqualTo("new quote");
    assertThat(names()).containsExactlyInAnyOrder("estimate.xlsx", "quote.xlsx");
  }

  @Test
  void leftovers_neverReplaceWhatWasChangedSince() throws IOException {
    diedBetweenTheMoves();
    write("quote.xlsx", "edited by hand");
    at("other.xlsx");
    assertThat(text("quote.xlsx")).isEqualTo("edited by hand");
    assertThat(names()).containsExactlyInAnyOrder("estimate.xlsx", "quote.xlsx");
  }

  /** A step writes into a job's folder and into the one of what was sent. */
  @Test
  void leftovers_ofARunInTwoFolders_areFinishedTogether() throws IOException {
    Path sent = Files.createDirectory(folder.resolve("sent"));
    diedBetweenTheMoves();
    write("sent/.a.xlsx." + NO_SUCH_PROCESS + "-1.old", "");
    write("sent/.a.xlsx." + NO_SUCH_PROCESS + "-1.part", "kept");
    NewFiles.putRight(List.of(folder, sent));
    assertThat(text("quote.xlsx")).isEqualTo("new quote");
    assertThat(text("sent/a.xlsx")).isEqualTo("kept");
    assertThat(names()).containsExactlyInAnyOrder("estimate.xlsx", "quote.xlsx", "sent");
  }

  /** Killed before what stood in the other folder was kept: nothing was moved yet. */
  @Test
  void leftovers_ofARunInTwoFolders_areClearedTogether() throws IOException {
    Path sent = Files.createDirectory(folder.resolve("sent"));
    write("job.csv", "old");
    write(".job.csv." + NO_SUCH_PROCESS + "-1.old", "old");
    write(".job.csv." + NO_SUCH_PROCESS + "-1.part", "new");
    write("sent/.a.xlsx." + NO_SUCH_PROCESS + "-1.part", "kept");
    NewFiles.putRight(List.of(folder, sent));
    assertThat(text("job.csv")).isEqualTo("old");
    assertThat(names()).containsExactlyInAnyOrder("job.csv", "sent");
    assertThat(sent).isEmptyDirectory();
  }

  private void diedBetweenTheMoves() throws IOException {
    write("estimate.xlsx", "new estimate");
    write(".estimate.xlsx." + NO_SUCH_PROCESS + "-1.old", "old estimate");
    write("quote.xlsx", "old quote");
    write(".quote.xlsx." + NO_SUCH_PROCESS + "-1.old", "old quote");
    write(".quote.xlsx." + NO_SUCH_PROCESS + "-1.part", "new quote");
  }

  @Test
  void newFile_keepsTheModeOfWhatItReplaces() throws IOException {
    assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"), "no modes here");
    write("quote.xlsx", "old");
    var mode = PosixFilePermissions.fromString("rw-r-----");
    Files.setPosixFilePermissions(folder.resolve("quote.xlsx"), mode);
    at("quote.xlsx").write(bytes("new"));
    assertThat(text("quote.xlsx")).isEqualTo("new");
    assertThat(Files.getPosixFilePermissions(folder.resolve("quote.xlsx"))).isEqualTo(mode);
  }

  @Test
  void newFile_writesWhatASymbolicLinkPointsTo() throws IOException {
    Path shared = Files.createDirectory(folder.resolve("shared"));
    Files.writeString(shared.resolve("june.xlsx"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("quote.xlsx"), Path.of("shared/june.xlsx"));
    at("quote.xlsx").write(bytes("new"));
    assertThat(link).isSymbolicLink();
    assertThat(Files.readString(shared.resolve("june.xlsx"))).isEqualTo("new");

    Files.delete(shared.resolve("june.xlsx")); // now it points to nothing yet
    NewFile.at(link, false).write(bytes("made"));
    assertThat(link).isSymbolicLink();
    assertThat(Files.readString(shared.resolve("june.xlsx"))).isEqualTo("made");
  }

  @Test
  void newFile_isNotALinkToItself() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("a.xlsx"), Path.of("a.xlsx"));
    assertThatThrownBy(() -> at("a.xlsx"))
        .hasMessage(link + ": it is a link that loops back to itself; name another");
  }

  @Test
  void newFile_isNotADevice() {
    Path device = Path.of("/dev/null");
    assumeTrue(Files.exists(device), "no such device here");
    assertThatThrownBy(() -> NewFile.at(device, true))
        .hasMessage("/dev/null: it is a device, not an ordinary file; name another");
  }

  private void assertBothAreOld() throws IOException {
    assertThat(text("estimate.xlsx")).isEqualTo("old estimate");
    assertThat(text("quote.xlsx")).isEqualTo("old quote");
    assertThat(names()).containsExactlyInAnyOrder("estimate.xlsx", "quote.xlsx");
  }

  private NewFile at(String name) {
    return NewFile.at(folder.resolve(name), true);
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private String text(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.map(entry -> entry.getFileName().toString()).toList();
    }
  }
}

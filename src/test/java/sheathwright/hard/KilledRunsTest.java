package sheathwright.hard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.cli.Main;
import sheathwright.job.file.NewFile;
import sheathwright.life.record.JobFolder;

/**
 * The program itself, killed at a random moment of each of its commands that write: once what died
 * has been put right, everything is as before or everything as after, and nothing else is there;
 * the same command then ends as if nobody had killed it. {@code -Druns=25} kills each command that
 * often, {@code -Dseed=3} at other moments, {@code -Dcommands=SAVE} that one alone; {@code
 * src/build/kills.sh} does both.
 */
class KilledRunsTest {

  private static final int RUNS = Integer.getInteger("runs", 0);
  private static final long SEED = Long.getLong("seed", 17);
  private static final String COMMANDS = System.getProperty("commands", "");

  /** Two of three kills wait for the first draft, and come within this time of it. */
  private static final int MILLIS_OF_WRITING = 40;

  @TempDir private Path folder;

  private int begun;
  private int wereOld;
  private int wereNew;

  @ParameterizedTest
  @EnumSource
  void aKilledRun_leavesEverythingOldOrEverythingNew(Writing writing) throws Exception {
    assumeTrue(RUNS > 0, "src/build/kills.sh asks for it");
    assumeTrue(COMMANDS.isEmpty() || COMMANDS.contains(writing.name()), "not asked for");
    Random random = new Random(SEED * 1_009 + writing.ordinal());
    Path before = Files.createDirectory(folder.resolve("before"));
    writing.prepare(before);
    Map<String, Long> old = Ran.files(before);
    Path office = copied(before);
    long began = System.nanoTime();
    begun(writing, office).waitFor();
    long nanos = System.nanoTime() - began;
    Map<String, Long> made = Ran.files(office);
    assertThat(made).as("the command does something").isNotEqualTo(old);

    for (int run = 0; run < RUNS; run++) {
      killed(writing, copied(before), random, nanos);
      putRight(office);
      Map<String, Long> after = Ran.files(office);
      assertThat(after).as("run %d", run).isIn(old, made);
      wereOld += after.equals(old) ? 1 : 0;
      wereNew += after.equals(made) ? 1 : 0;
      Ran again = Ran.of(writing.command(office).toArray());
      again.holds();
      assertThat(Ran.files(office)).as("after it is run again: %s", again.err()).isEqualTo(made);
    }
    System.out.printf(
        "%s: %d killed, %d with a draft begun; %d as before, %d as after%n",
        writing, RUNS, begun, wereOld, wereNew);
  }

  private void killed(Writing writing, Path office, Random random, long nanos) throws Exception {
    Process run = begun(writing, office);
    if (random.nextInt(3) == 0) {
      LockSupport.parkNanos((long) (random.nextDouble() * nanos));
    } else {
      while (run.isAlive() && !hasDraft(office)) {
        LockSupport.parkNanos(200_000);
      }
      TimeUnit.MICROSECONDS.sleep(random.nextInt(MILLIS_OF_WRITING * 1_000));
    }
    run.destroyForcibly().waitFor();
    begun += hasDraft(office) ? 1 : 0;
  }

  private static boolean hasDraft(Path office) throws IOException {
    try (Stream<Path> files = Files.walk(office)) {
      return files.anyMatch(file -> file.toString().endsWith(".part"));
    } catch (java.io.UncheckedIOException movedMeanwhile) {
      return true;
    }
  }

  /** What the next run does before it does anything else. */
  private static void putRight(Path office) {
    JobFolder.putRight(office.resolve("job"));
    Path jobs = office.resolve("jobs");
    NewFile.at((Files.isDirectory(jobs) ? jobs : office).resolve("next.xlsx"), true);
  }

  private Path copied(Path before) throws IOException {
    Path office = folder.resolve(Writing.COPY);
    if (Files.exists(office)) {
      HardUseTest.cleared(office);
    }
    return Sent.copied(before, office);
  }

  private static Process begun(Writing writing, Path office) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add(Main.class.getName());
    command.addAll(writing.command(office));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}

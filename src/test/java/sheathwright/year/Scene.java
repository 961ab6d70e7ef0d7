package sheathwright.year;

import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import sheathwright.year.disk.Disk;

/**
 * A command about to be run on a job.
 *
 * @param words as they are typed
 */
record Scene(Disk disk, Random random, Life life, String... words) {

  /** It holds no word: every run that takes a number locks it, and it stays. */
  private static final String LOCK = "/firm/.firm.lock";

  /** Runs it as it is. */
  Answer run() {
    return run(disk);
  }

  /** Runs it on another disk. */
  Answer run(Disk other) {
    return life.desk.run(other, words);
  }

  /** Runs another command. */
  Answer run(String... others) {
    return life.desk.run(disk, others);
  }

  /** The files of a disk. */
  static Map<String, String> files(Disk disk) {
    TreeMap<String, String> files = disk.files();
    files.remove(LOCK);
    return files;
  }

  /** Says that something does not hold. */
  AssertionError broken(String what, Object... more) {
    return new AssertionError(
        "%s: %s%n%s".formatted(String.join(" ", words), what.formatted(more), tables()));
  }

  /** That two states of a disk must be one. */
  void same(String what, Map<String, String> is, Map<String, String> wanted) {
    if (!is.equals(wanted)) {
      throw broken("%s: %s", what, differences(is, wanted));
    }
  }

  /** A refusal says where, and leaves everything as it was. */
  void refused(Answer answer, Map<String, String> before, Map<String, String> after) {
    if (answer.isRefused()) {
      same("refused, and yet files changed", after, before);
      boolean hasPlace =
          answer.err().contains(".csv")
              || answer.err().contains(life.folder)
              || answer.err().contains(".xlsx");
      if (!hasPlace) {
        throw broken("refused without a place: %s", answer.err());
      }
    } else if (!answer.isDone()) {
      throw broken("status %d: %s%s", answer.status(), answer.out(), answer.err());
    }
  }

  private static String differences(Map<String, String> is, Map<String, String> wanted) {
    StringBuilder all = new StringBuilder();
    TreeMap<String, String> names = new TreeMap<>(is);
    names.putAll(wanted);
    names
        .keySet()
        .forEach(
            name -> {
              String one = is.getOrDefault(name, "(not there)");
              String other = wanted.getOrDefault(name, "(not there)");
              if (!one.equals(other)) {
                all.append("%n%s is%n%s%nand not%n%s".formatted(name, cut(one), cut(other)));
              }
            });
    return all.toString();
  }

  private static String cut(String text) {
    return text.length() < 1_500 ? text : text.substring(0, 1_500) + "...";
  }

  /** The job's tables, for whoever looks for the fault. */
  private String tables() {
    StringBuilder all = new StringBuilder();
    disk.files()
        .forEach(
            (name, text) -> {
              if (name.startsWith(life.folder + "/") && name.endsWith(".csv")) {
                all.append("--- ").append(name).append('\n').append(cut(text)).append('\n');
              }
            });
    return all.toString();
  }

  @Override
  public String toString() {
    return Arrays.toString(words);
  }
}

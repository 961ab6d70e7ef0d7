package sheathwright.job.file;

import static java.util.stream.Collectors.groupingBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Drafts in folders whose process is dead, or that are older than a day. Where a run died between
 * two moves, the rest of its files are moved too; everything else of it is deleted. Drafts of a
 * process that lives are left alone.
 */
final class Leftovers {

  static final String DRAFT = ".part";
  static final String KEPT = ".old";

  private static final Pattern NAME = Pattern.compile("\\.(.+)\\.((\\d{1,18})-\\d+)\\.(part|old)");
  private static final Duration A_DAY = Duration.ofDays(1);

  private final List<Leftover> found;

  private Leftovers(List<Leftover> found) {
    this.found = found;
  }

  /**
   * One of them.
   *
   * @param place where it was to stand, or stood
   * @param run which files were written together with it
   */
  private record Leftover(Path path, Path place, String run, boolean isDraft) {

    /** Whether its place is still as it was when its run kept a copy. */
    boolean isAsKept() throws IOException {
      String name = path.getFileName().toString();
      Path kept = path.resolveSibling(name.substring(0, name.length() - DRAFT.length()) + KEPT);
      return Files.exists(kept)
          && (Files.exists(place) ? Files.mismatch(place, kept) < 0 : Files.size(kept) == 0);
    }
  }

  /** Those of folders in which one run writes; none of one that cannot be listed. */
  static Leftovers in(List<Path> folders) {
    return new Leftovers(folders.stream().flatMap(folder -> in(folder).stream()).toList());
  }

  private static List<Leftover> in(Path folder) {
    List<Leftover> found = new ArrayList<>();
    try (Stream<Path> entries = Files.list(folder)) {
      for (Path path : entries.toList()) {
        Matcher name = NAME.matcher(path.getFileName().toString());
        if (name.matches() && isDead(path, Long.parseLong(name.group(3)))) {
          Path place = path.resolveSibling(name.group(1));
          boolean isDraft = name.group(4).equals(DRAFT.substring(1));
          found.add(new Leftover(path, place, name.group(2), isDraft));
        }
      }
    } catch (IOException cannotBeListed) {
      return List.of();
    }
    return found;
  }

  private static boolean isDead(Path path, long pid) {
    boolean isRunning =
        pid == ProcessHandle.current().pid()
            ? Draft.isUnderWay(path)
            : ProcessHandle.of(pid).map(ProcessHandle::isAlive).orElse(false);
    return !isRunning || isOld(path);
  }

  private static boolean isOld(Path path) {
    try {
      return Files.getLastModifiedTime(path).toInstant().isBefore(Instant.now().minus(A_DAY));
    } catch (IOException goneMeanwhile) {
      return false;
    }
  }

  /** Finishes what was begun, and clears the rest. */
  void putRight() {
    Draft.uninterrupted(
        () -> {
          found.stream().collect(groupingBy(Leftover::run)).values().forEach(Leftovers::finish);
          found.forEach(leftover -> Draft.deleted(leftover.path()));
        });
  }

  private static void finish(List<Leftover> together) {
    List<Leftover> drafts = together.stream().filter(Leftover::isDraft).toList();
    try {
      for (Leftover draft : drafts) {
        if (!draft.isAsKept()) {
          return;
        }
      }
      for (Leftover draft : drafts) {
        Files.move(draft.path(), draft.place(), StandardCopyOption.ATOMIC_MOVE);
      }
    } catch (IOException refused) {
      // then its drafts are only cleared
    }
  }
}

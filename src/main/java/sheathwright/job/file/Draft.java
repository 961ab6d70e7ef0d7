package sheathwright.job.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A new file before it stands in its place: beside it, under a hidden name that says which run of
 * which process writes it. A process that is told to end clears its drafts; one that is killed
 * leaves them to {@link Leftovers}.
 */
final class Draft {

  private static final AtomicLong RUNS = new AtomicLong();
  private static final Set<Path> UNDER_WAY = ConcurrentHashMap.newKeySet();
  private static final Object PLACING = new Object();

  static {
    Runtime.getRuntime().addShutdownHook(new Thread(Draft::clearAll));
  }

  private final NewFile file;
  private final Path path;
  private final Path kept;
  private FileTime stoodSince; // null if nothing stood in its place

  Draft(NewFile file, long run) {
    this.file = file;
    long pid = ProcessHandle.current().pid();
    String name = ".%s.%s-%s".formatted(file.place().getFileName(), pid, run);
    this.path = file.place().resolveSibling(name + Leftovers.DRAFT);
    this.kept = file.place().resolveSibling(name + Leftovers.KEPT);
  }

  /** A number for the files that are written together next. */
  static long nextRun() {
    return RUNS.incrementAndGet();
  }

  /** Whether this process is writing it now. */
  static boolean isUnderWay(Path path) {
    return UNDER_WAY.contains(path);
  }

  /** Does something that a process does not end in the middle of, unless it is killed. */
  static void uninterrupted(Runnable moves) {
    synchronized (PLACING) {
      moves.run();
    }
  }

  private static void clearAll() {
    synchronized (PLACING) {
      UNDER_WAY.forEach(Draft::deleted);
    }
  }

  NewFile file() {
    return file;
  }

  /** Writes all of it, to the disk, with the permissions of the file that it will replace. */
  void write(NewFile.Content content) {
    UNDER_WAY.add(path);
    UNDER_WAY.add(kept);
    try (FileChannel channel =
        FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      takePermissions();
      OutputStream stream = new BufferedOutputStream(Channels.newOutputStream(channel));
      content.writeTo(stream);
      stream.flush();
      channel.force(true);
    } catch (IOException refused) {
      throw file.refused(refused);
    }
  }

  private void takePermissions() throws IOException {
    var mine = Files.getFileAttributeView(path, PosixFileAttributeView.class);
    if (mine != null && file.exists()) {
      mine.setPermissions(Files.getPosixFilePermissions(file.place()));
    }
  }

  /** Keeps a copy of what stands in its place; an empty one, if nothing does. */
  void keepWhatStood() {
    try {
      if (file.exists()) {
        stoodSince = Files.getLastModifiedTime(file.place());
        Files.copy(file.place(), kept, StandardCopyOption.COPY_ATTRIBUTES);
        Files.setLastModifiedTime(kept, FileTime.from(Instant.now())); // as old as its draft
      } else {
        Files.createFile(kept);
      }
    } catch (IOException refused) {
      throw file.refused(refused);
    }
  }

  void place() throws IOException {
    Files.move(path, file.place(), StandardCopyOption.ATOMIC_MOVE);
  }

  /** Puts back what was kept. */
  void putBack() throws IOException {
    if (stoodSince == null) {
      Files.deleteIfExists(file.place());
    } else {
      Files.move(kept, file.place(), StandardCopyOption.ATOMIC_MOVE);
      Files.setLastModifiedTime(file.place(), stoodSince);
    }
  }

  /** Leaves nothing of it beside its place. */
  void clear() {
    for (Path each : new Path[] {path, kept}) {
      deleted(each);
      UNDER_WAY.remove(each);
    }
  }

  /** Deletes it if that can be done: what stays is cleared by the next run. */
  static void deleted(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException stays) {
      // said by nobody: the files that were asked for are written, or their own refusal is said
    }
  }
}

package sheathwright.year.disk;

import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;

/**
 * A path on a disk in memory.
 *
 * @param names its names, as the machine's own paths join and part them
 */
record DiskPath(Disk disk, Path names) implements Path {

  /** Where it leads to, from the root. */
  Path key() {
    return Path.of("/").resolve(names).normalize();
  }

  private Path with(Path other) {
    return other == null ? null : new DiskPath(disk, other);
  }

  private static Path bare(Path path) {
    return path instanceof DiskPath ours ? ours.names : path;
  }

  @Override
  public FileSystem getFileSystem() {
    return disk;
  }

  @Override
  public boolean isAbsolute() {
    return names.isAbsolute();
  }

  @Override
  public Path getRoot() {
    return with(names.getRoot());
  }

  @Override
  public Path getFileName() {
    return with(names.getFileName());
  }

  @Override
  public Path getParent() {
    return with(names.getParent());
  }

  @Override
  public int getNameCount() {
    return names.getNameCount();
  }

  @Override
  public Path getName(int index) {
    return with(names.getName(index));
  }

  @Override
  public Path subpath(int from, int to) {
    return with(names.subpath(from, to));
  }

  @Override
  public boolean startsWith(Path other) {
    return names.startsWith(bare(other));
  }

  @Override
  public boolean endsWith(Path other) {
    return names.endsWith(bare(other));
  }

  @Override
  public Path normalize() {
    return with(names.normalize());
  }

  @Override
  public Path resolve(Path other) {
    return with(names.resolve(bare(other)));
  }

  @Override
  public Path relativize(Path other) {
    return with(names.relativize(bare(other)));
  }

  @Override
  public URI toUri() {
    return URI.create("disk:" + key());
  }

  @Override
  public Path toAbsolutePath() {
    return names.isAbsolute() ? this : with(Path.of("/").resolve(names));
  }

  @Override
  public Path toRealPath(LinkOption... options) {
    return with(key());
  }

  @Override
  public WatchKey register(
      WatchService watcher, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers) {
    throw new UnsupportedOperationException("nobody watches it");
  }

  @Override
  public int compareTo(Path other) {
    return names.compareTo(bare(other));
  }

  @Override
  public String toString() {
    return names.toString();
  }
}

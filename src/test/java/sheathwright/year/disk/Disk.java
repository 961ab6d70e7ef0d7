package sheathwright.year.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A disk in memory. Everything that changes it is one act, counted: a process dies at the act that
 * it is told, half of what that act writes on the disk, and nothing of what it would do then.
 */
public final class Disk extends FileSystem {

  private static final long NEVER = -1;

  private final DiskProvider provider = new DiskProvider(this);
  private final TreeMap<Path, Entry> entries = new TreeMap<>();
  private long acts;
  private long written;
  private long dies = NEVER;
  private boolean isDead;
  private long room = Long.MAX_VALUE;

  /** An empty disk. */
  public Disk() {
    entries.put(Path.of("/"), Entry.folder());
  }

  /** The same files on a disk of their own, without what is wrong with this one. */
  public Disk copy() {
    Disk copy = new Disk();
    copy.entries.putAll(entries);
    return copy;
  }

  /** Everything is again as it was on a copy. */
  public void restore(Disk copy) {
    entries.clear();
    entries.putAll(copy.entries);
  }

  /** A path on this disk. */
  public Path path(String text) {
    return new DiskPath(this, Path.of(text));
  }

  /** How often it was changed. */
  public long acts() {
    return acts;
  }

  /** How many bytes were written. */
  public long written() {
    return written;
  }

  /** The process that writes dies at this act from now on, counted from 1. */
  public void dieAt(long act) {
    dies = acts + act;
  }

  /** Only so many bytes more can be written. */
  public void leave(long bytes) {
    room = bytes;
  }

  /** Another process comes to it, and there is room again. */
  public void heal() {
    dies = NEVER;
    isDead = false;
    room = Long.MAX_VALUE;
  }

  /** Whether the process that wrote died. */
  public boolean isDead() {
    return isDead;
  }

  /** The text of every file, by its name, each byte a letter. */
  public TreeMap<String, String> files() {
    TreeMap<String, String> files = new TreeMap<>();
    entries.forEach(
        (path, entry) -> {
          if (entry.isRegularFile()) {
            files.put(path.toString(), new String(entry.bytes(), StandardCharsets.ISO_8859_1));
          }
        });
    return files;
  }

  /** The text of one file; empty if it is not there. */
  public String text(String path) {
    Entry entry = entries.get(Path.of(path));
    return entry == null ? "" : new String(entry.bytes(), StandardCharsets.UTF_8);
  }

  /** Puts a file there by hand, with the folders above it. */
  public void type(String path, String text) {
    Path file = Path.of(path);
    for (Path at = file.getParent(); at != null; at = at.getParent()) {
      entries.putIfAbsent(at, Entry.folder());
    }
    entries.put(file, Entry.file(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** Takes a file away by hand. */
  public void takeAway(String path) {
    entries.remove(Path.of(path));
  }

  /** The names of all files and folders. */
  public Set<String> names() {
    return entries.keySet().stream().map(Path::toString).collect(Collectors.toSet());
  }

  /** What stands at a path; null if nothing does. */
  Entry at(Path path) {
    return entries.get(key(path));
  }

  Entry required(Path path) throws NoSuchFileException {
    Entry entry = at(path);
    if (entry == null) {
      throw new NoSuchFileException(path.toString());
    }
    return entry;
  }

  /** What lies in a folder. */
  List<Path> in(Path folder) {
    Path key = key(folder);
    return entries.keySet().stream().filter(path -> key.equals(path.getParent())).toList();
  }

  /** Puts something that was not there. */
  void make(Path path, Entry entry) throws IOException {
    if (at(path) != null) {
      throw new FileAlreadyExistsException(path.toString());
    }
    Entry folder = at(path.toAbsolutePath().getParent());
    if (folder == null || !folder.isDirectory()) {
      throw new NoSuchFileException(path.toString());
    }
    act();
    entries.put(key(path), entry);
  }

  /** Writes bytes behind those that a file has. */
  void append(Path path, byte[] more) throws IOException {
    boolean isLast = acts + 1 == dies;
    int fits = (int) Math.min(isLast ? more.length / 2 : more.length, room);
    byte[] before = required(path).bytes();
    if (!isDead) {
      byte[] all = Arrays.copyOf(before, before.length + fits);
      System.arraycopy(more, 0, all, before.length, fits);
      entries.put(key(path), Entry.file(all));
      room -= fits;
      written += fits;
    }
    act();
    if (fits < more.length) {
      throw new IOException("No space left on device");
    }
  }

  /** Changes something that is there. */
  void change(Path path, Entry entry) throws IOException {
    required(path);
    act();
    entries.put(key(path), entry);
  }

  /**
   * Nobody who dies while he clears up notices it: in one process with the next, what would not be
   * done after that is to be done.
   */
  void remove(Path path) throws IOException {
    required(path);
    try {
      act();
      entries.remove(key(path));
    } catch (Killed atLast) {
      throw new IOException("the process is dead", atLast);
    }
  }

  /** One thing takes another's place, or a free one, in one act. */
  void move(Path from, Path to) throws IOException {
    Entry entry = required(from);
    act();
    entries.remove(key(from));
    entries.put(key(to), entry);
  }

  private void act() throws IOException {
    if (isDead) {
      throw new IOException("the process is dead");
    }
    acts++;
    if (acts == dies) {
      isDead = true;
      throw new Killed();
    }
  }

  private static Path key(Path path) {
    return ((DiskPath) path).key();
  }

  @Override
  public FileSystemProvider provider() {
    return provider;
  }

  @Override
  public void close() {
    throw new UnsupportedOperationException("it stays");
  }

  @Override
  public boolean isOpen() {
    return true;
  }

  @Override
  public boolean isReadOnly() {
    return false;
  }

  @Override
  public String getSeparator() {
    return "/";
  }

  @Override
  public Iterable<Path> getRootDirectories() {
    return List.of(path("/"));
  }

  @Override
  public Iterable<FileStore> getFileStores() {
    return List.of();
  }

  @Override
  public Set<String> supportedFileAttributeViews() {
    return Set.of("basic");
  }

  @Override
  public Path getPath(String first, String... more) {
    return new DiskPath(this, Path.of(first, more));
  }

  @Override
  public PathMatcher getPathMatcher(String pattern) {
    PathMatcher matcher = FileSystems.getDefault().getPathMatcher(pattern);
    return path -> matcher.matches(Path.of(path.toString()));
  }

  @Override
  public UserPrincipalLookupService getUserPrincipalLookupService() {
    throw new UnsupportedOperationException("it has no users");
  }

  @Override
  public WatchService newWatchService() {
    throw new UnsupportedOperationException("nobody watches it");
  }
}

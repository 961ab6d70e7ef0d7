package sheathwright.year.disk;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributeView;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.FileTime;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What Java's own file functions ask of a disk in memory. */
final class DiskProvider extends FileSystemProvider {

  private final Disk disk;

  DiskProvider(Disk disk) {
    this.disk = disk;
  }

  @Override
  public String getScheme() {
    return "disk";
  }

  @Override
  public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
    throw new UnsupportedOperationException("it is made by its own name");
  }

  @Override
  public FileSystem getFileSystem(URI uri) {
    return disk;
  }

  @Override
  public Path getPath(URI uri) {
    return disk.path(uri.getSchemeSpecificPart());
  }

  @Override
  public SeekableByteChannel newByteChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    return newFileChannel(path, options, attributes);
  }

  @Override
  public FileChannel newFileChannel(
      Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
      throws IOException {
    boolean writes =
        options.contains(StandardOpenOption.WRITE) || options.contains(StandardOpenOption.APPEND);
    boolean isThere = disk.at(path) != null;
    if (options.contains(StandardOpenOption.CREATE_NEW)
        || !isThere && options.contains(StandardOpenOption.CREATE)) {
      disk.make(path, Entry.file(new byte[0]));
    } else if (writes && options.contains(StandardOpenOption.TRUNCATE_EXISTING)) {
      disk.change(path, Entry.file(new byte[0]));
    }
    if (disk.required(path).isDirectory()) {
      throw new IOException("Is a directory");
    }
    return new DiskChannel(disk, path);
  }

  @Override
  public DirectoryStream<Path> newDirectoryStream(
      Path folder, DirectoryStream.Filter<? super Path> filter) throws IOException {
    if (!disk.required(folder).isDirectory()) {
      throw new NotDirectoryException(folder.toString());
    }
    List<Path> found = new ArrayList<>();
    for (Path each : disk.in(folder)) {
      Path path = folder.resolve(each.getFileName().toString());
      if (filter.accept(path)) {
        found.add(path);
      }
    }
    return new DirectoryStream<>() {
      @Override
      public Iterator<Path> iterator() {
        return found.iterator();
      }

      @Override
      public void close() {
        // nothing is open
      }
    };
  }

  @Override
  public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
    disk.make(folder, Entry.folder());
  }

  @Override
  public void delete(Path path) throws IOException {
    if (!disk.in(path).isEmpty()) {
      throw new DirectoryNotEmptyException(path.toString());
    }
    disk.remove(path);
  }

  @Override
  public void copy(Path from, Path to, CopyOption... options) throws IOException {
    Entry entry = disk.required(from);
    if (List.of(options).contains(StandardCopyOption.REPLACE_EXISTING) && disk.at(to) != null) {
      disk.remove(to);
    }
    disk.make(to, Entry.file(new byte[0]));
    disk.append(to, entry.bytes());
  }

  @Override
  public void move(Path from, Path to, CopyOption... options) throws IOException {
    disk.move(from, to);
  }

  @Override
  public boolean isSameFile(Path one, Path other) {
    return ((DiskPath) one).key().equals(((DiskPath) other).key());
  }

  @Override
  public boolean isHidden(Path path) {
    return path.getFileName().toString().startsWith(".");
  }

  @Override
  public FileStore getFileStore(Path path) {
    throw new UnsupportedOperationException("it lies nowhere");
  }

  @Override
  public void checkAccess(Path path, AccessMode... modes) throws IOException {
    disk.required(path);
  }

  @Override
  public <V extends FileAttributeView> V getFileAttributeView(
      Path path, Class<V> type, LinkOption... options) {
    return type == BasicFileAttributeView.class ? type.cast(new View(disk, path)) : null;
  }

  /** When a file was changed, and by whom it may be said. */
  private record View(Disk disk, Path path) implements BasicFileAttributeView {
    @Override
    public String name() {
      return "basic";
    }

    @Override
    public BasicFileAttributes readAttributes() throws IOException {
      return disk.required(path);
    }

    @Override
    public void setTimes(FileTime changed, FileTime read, FileTime made) throws IOException {
      disk.change(path, new Entry(disk.required(path).bytes(), changed));
    }
  }

  @Override
  public <A extends BasicFileAttributes> A readAttributes(
      Path path, Class<A> type, LinkOption... options) throws IOException {
    return type.cast(disk.required(path));
  }

  @Override
  public Map<String, Object> readAttributes(Path path, String names, LinkOption... options) {
    throw new UnsupportedOperationException("ask for them by their type");
  }

  @Override
  public void setAttribute(Path path, String name, Object value, LinkOption... options) {
    throw new UnsupportedOperationException("set them by their view");
  }
}

package sheathwright.year.disk;

import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Instant;

/**
 * A file or a folder of the disk.
 *
 * @param bytes what is in the file; null of a folder
 * @param changed when it was last changed
 */
record Entry(byte[] bytes, FileTime changed) implements BasicFileAttributes {

  static Entry file(byte[] bytes) {
    return new Entry(bytes, FileTime.from(Instant.now()));
  }

  static Entry folder() {
    return file(null);
  }

  @Override
  public boolean isDirectory() {
    return bytes == null;
  }

  @Override
  public boolean isRegularFile() {
    return bytes != null;
  }

  @Override
  public boolean isSymbolicLink() {
    return false;
  }

  @Override
  public boolean isOther() {
    return false;
  }

  @Override
  public long size() {
    return bytes == null ? 0 : bytes.length;
  }

  @Override
  public FileTime lastModifiedTime() {
    return changed;
  }

  @Override
  public FileTime lastAccessTime() {
    return changed;
  }

  @Override
  public FileTime creationTime() {
    return changed;
  }

  @Override
  public Object fileKey() {
    return null;
  }
}

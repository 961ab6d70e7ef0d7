package sheathwright.year.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/** An open file of a disk in memory: read from its begin, or written on at its end. */
final class DiskChannel extends FileChannel {

  private final Disk disk;
  private final Path path;
  private long position;

  DiskChannel(Disk disk, Path path) {
    this.disk = disk;
    this.path = path;
  }

  @Override
  public int read(ByteBuffer into) throws IOException {
    int read = read(into, position);
    position += Math.max(0, read);
    return read;
  }

  @Override
  public int read(ByteBuffer into, long from) throws IOException {
    byte[] bytes = disk.required(path).bytes();
    int count = (int) Math.min(into.remaining(), bytes.length - from);
    if (count <= 0) {
      return into.hasRemaining() ? -1 : 0;
    }
    into.put(bytes, (int) from, count);
    return count;
  }

  @Override
  public int write(ByteBuffer from) throws IOException {
    byte[] bytes = new byte[from.remaining()];
    from.get(bytes);
    disk.append(path, bytes);
    position += bytes.length;
    return bytes.length;
  }

  @Override
  public long position() {
    return position;
  }

  @Override
  public FileChannel position(long other) {
    position = other;
    return this;
  }

  @Override
  public long size() throws IOException {
    return disk.required(path).size();
  }

  @Override
  public void force(boolean isAll) {
    // what is written is there
  }

  @Override
  public FileLock lock(long from, long size, boolean isShared) {
    return tryLock(from, size, isShared);
  }

  @Override
  public FileLock tryLock(long from, long size, boolean isShared) {
    return new FileLock(this, from, size, isShared) {
      @Override
      public boolean isValid() {
        return true;
      }

      @Override
      public void release() {
        // nobody else is there
      }
    };
  }

  @Override
  protected void implCloseChannel() {
    // nothing is open
  }

  @Override
  public long read(ByteBuffer[] into, int from, int count) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long write(ByteBuffer[] from, int first, int count) {
    throw new UnsupportedOperationException();
  }

  @Override
  public int write(ByteBuffer from, long at) {
    throw new UnsupportedOperationException();
  }

  @Override
  public FileChannel truncate(long size) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long transferTo(long from, long count, WritableByteChannel to) {
    throw new UnsupportedOperationException();
  }

  @Override
  public long transferFrom(ReadableByteChannel from, long at, long count) {
    throw new UnsupportedOperationException();
  }

  @Override
  public MappedByteBuffer map(MapMode mode, long from, long size) {
    throw new UnsupportedOperationException();
  }
}

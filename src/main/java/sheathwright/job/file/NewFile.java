package sheathwright.job.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/**
 * A file that is written whole or not at all: first as a draft beside its place, then moved there
 * in one step. A symbolic link is followed: what it points to is written, and the link stays.
 */
public final class NewFile {

  private static final int LINKS_AT_MOST = 40; // as many as Linux follows

  private final Path named;
  private final Path place;
  private final boolean mayReplace;

  private NewFile(Path named, Path place, boolean mayReplace) {
    this.named = named;
    this.place = place;
    this.mayReplace = mayReplace;
  }

  /** What will stand in a file. */
  @FunctionalInterface
  public interface Content {

    /** Writes all of it; the stream is buffered, and closed by whoever opened it. */
    void writeTo(OutputStream stream) throws IOException;
  }

  /**
   * A file to be written, which replaces an older one if somebody said so with --force. What a run
   * that died left in its folder is put right first.
   *
   * @throws ProblemsException if it exists and may not be replaced, or its folder does not exist
   */
  public static NewFile at(Path named, boolean mayReplace) {
    return at(named, mayReplace, "add --force to replace it, or name another");
  }

  /**
   * A file to be written that never replaces another, whatever is asked for.
   *
   * @param wayOut what somebody may do about one that exists
   * @throws ProblemsException if it exists, or its folder does not
   */
  public static NewFile once(Path named, String wayOut) {
    return at(named, false, wayOut);
  }

  private static NewFile at(Path named, boolean mayReplace, String wayOut) {
    Path place = followed(named);
    Path folder = place.getParent();
    if (folder == null || Files.isDirectory(place)) {
      throw problem(named, "it is a folder; name a file in it");
    }
    if (!Files.isDirectory(folder)) {
      throw problem(named, "its folder does not exist; make it first");
    }
    NewFiles.putRight(List.of(folder));
    NewFile file = new NewFile(named, place, mayReplace);
    if (file.exists() && !mayReplace) {
      throw problem(named, "it exists and is kept; " + wayOut);
    }
    if (file.exists() && !Files.isRegularFile(place)) {
      throw problem(named, "it is a device, not an ordinary file; name another");
    }
    return file;
  }

  /**
   * Writes all of it.
   *
   * @throws ProblemsException if it cannot be written; then everything is as it was
   */
  public void write(byte[] bytes) {
    write(stream -> stream.write(bytes));
  }

  /**
   * Writes all of it, as it comes.
   *
   * @throws ProblemsException if it cannot be written; then everything is as it was
   */
  public void write(Content content) {
    new NewFiles().with(this, content).write();
  }

  /** Where it will stand: at the end of all links. */
  Path place() {
    return place;
  }

  boolean exists() {
    return Files.exists(place);
  }

  /** Refuses to replace what was not there when the file was asked for. */
  void requireFree() {
    if (!mayReplace && exists()) {
      throw problem(named, "something else made it in the meantime; it is kept");
    }
  }

  /** That it could not be written, as one line. */
  ProblemsException refused(IOException reason) {
    return problem(named, "it cannot be written: " + FileTrouble.of(reason));
  }

  private static Path followed(Path named) {
    Path at = named.toAbsolutePath();
    try {
      for (int links = 0; Files.isSymbolicLink(at); links++) {
        if (links == LINKS_AT_MOST) {
          throw problem(named, "it is a link that loops back to itself; name another");
        }
        at = at.resolveSibling(Files.readSymbolicLink(at));
      }
    } catch (IOException unreadable) {
      throw problem(named, "it is a link that cannot be read: " + FileTrouble.of(unreadable));
    }
    return at;
  }

  private static ProblemsException problem(Path named, String message) {
    return new ProblemsException(List.of(new Problem(named.toString(), 0, "", message)));
  }
}

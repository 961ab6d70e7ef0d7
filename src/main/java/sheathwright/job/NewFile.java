package sheathwright.job;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/**
 * A file that is written whole or not at all: first beside its place, then moved there in one step.
 */
public final class NewFile {

  private final Path place;
  private final boolean mayReplace;

  private NewFile(Path place, boolean mayReplace) {
    this.place = place;
    this.mayReplace = mayReplace;
  }

  /**
   * A file to be written.
   *
   * @throws ProblemsException if it exists and may not be replaced, or its folder does not exist
   */
  public static NewFile at(Path place, boolean mayReplace) {
    Path folder = place.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      throw problem(place, "its folder does not exist; make it first");
    }
    if (Files.isDirectory(place)) {
      throw problem(place, "it is a folder; name a file in it");
    }
    if (Files.exists(place) && !mayReplace) {
      throw problem(place, "it exists and is kept; add --force to replace it, or name another");
    }
    return new NewFile(place, mayReplace);
  }

  /** What a file holds, written bit by bit. */
  @FunctionalInterface
  public interface Body {
    /** Writes all of it, and leaves the stream open. */
    void writeTo(OutputStream out) throws IOException;
  }

  /** Writes all of it. */
  public void write(byte[] bytes) throws IOException {
    write(out -> out.write(bytes));
  }

  /** Writes all of it as it is made; what is broken off leaves nothing. */
  public void write(Body body) throws IOException {
    Path folder = place.toAbsolutePath().getParent();
    String draftName = "." + place.getFileName() + "." + ProcessHandle.current().pid() + ".part";
    Path draft = folder.resolve(draftName);
    try {
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(draft))) {
        body.writeTo(out);
      }
      if (!mayReplace && Files.exists(place)) {
        throw problem(place, "it was made meanwhile and is kept");
      }
      Files.move(draft, place, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private static ProblemsException problem(Path place, String message) {
    return new ProblemsException(List.of(new Problem(place.toString(), 0, "", message)));
  }
}

package sheathwright.job;

import java.io.IOException;
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

  /** Writes all of it. */
  public void write(byte[] bytes) throws IOException {
    Path folder = place.toAbsolutePath().getParent();
    String draftName = "." + place.getFileName() + "." + ProcessHandle.current().pid() + ".part";
    Path draft = folder.resolve(draftName);
    try {
      Files.write(draft, bytes);
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

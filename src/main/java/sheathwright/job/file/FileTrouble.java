package sheathwright.job.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a disk, a folder or a stream refused something, in words that a user can act on. */
public final class FileTrouble {

  private FileTrouble() {}

  /** The reason, without the name of the file. */
  public static String of(IOException thrown) {
    if (thrown instanceof AccessDeniedException) {
      return "permission is denied, or another program has it open";
    }
    if (thrown instanceof FileAlreadyExistsException) {
      return "a file of that name stands where a folder is wanted";
    }
    if (thrown instanceof NoSuchFileException) {
      return "it or its folder is not there";
    }
    String reason =
        thrown instanceof FileSystemException file ? file.getReason() : thrown.getMessage();
    return reason == null ? "the disk refused it" : reason;
  }
}

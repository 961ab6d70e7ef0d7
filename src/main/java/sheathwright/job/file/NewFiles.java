package sheathwright.job.file;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import sheathwright.job.table.ProblemsException;

/**
 * Several files written together: all of them or none. Each is first written whole as a draft, and
 * is on the disk, before the first is moved to its place; if one cannot be moved, those before it
 * go back to what they were. Only a run that is killed between two moves leaves some new and some
 * old, and then the next run in that folder moves the rest.
 */
public final class NewFiles {

  private final List<NewFile> files = new ArrayList<>();
  private final List<NewFile.Content> contents = new ArrayList<>();

  /**
   * Puts right what runs that died have left in folders that are written to together: where one
   * died between two moves, the rest of its files in all of them are moved too.
   */
  public static void putRight(List<Path> folders) {
    Leftovers.in(folders).putRight();
  }

  /** These files and one more. */
  public NewFiles with(NewFile file, byte[] bytes) {
    return with(file, stream -> stream.write(bytes));
  }

  /** These files and one more, its content written as it comes. */
  public NewFiles with(NewFile file, NewFile.Content content) {
    files.add(file);
    contents.add(content);
    return this;
  }

  /**
   * Writes all of them.
   *
   * @throws ProblemsException if one cannot be written; then everything is as it was
   */
  public void write() {
    long run = Draft.nextRun();
    List<Draft> drafts = files.stream().map(file -> new Draft(file, run)).toList();
    try {
      for (int i = 0; i < drafts.size(); i++) {
        drafts.get(i).write(contents.get(i));
      }
      Draft.uninterrupted(() -> place(drafts));
    } finally {
      drafts.forEach(Draft::clear);
    }
  }

  private static void place(List<Draft> drafts) {
    for (Draft draft : drafts) {
      draft.file().requireFree();
    }
    boolean isAlone = drafts.size() == 1;
    if (!isAlone) {
      drafts.forEach(Draft::keepWhatStood);
    }
    List<Draft> placed = new ArrayList<>();
    for (Draft draft : drafts) {
      try {
        draft.place();
        placed.add(draft);
      } catch (IOException refused) {
        throw draft.file().refused(withPutBack(placed, refused));
      }
    }
  }

  private static IOException withPutBack(List<Draft> placed, IOException refused) {
    for (Draft draft : placed) {
      try {
        draft.putBack();
      } catch (IOException stuck) {
        return new FileSystemException(
            draft.file().place().toString(),
            null,
            FileTrouble.of(refused)
                + "; and "
                + draft.file().place()
                + " is the new one already, and cannot be put back: "
                + FileTrouble.of(stuck));
      }
    }
    return refused;
  }
}

package sheathwright.life.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import sheathwright.job.file.NewFile;
import sheathwright.job.file.NewFiles;

/** Everything that one step writes: tables, what is kept of what was sent, and copies of it. */
public final class Writing {

  private final Path job;
  private final List<Table> first = new ArrayList<>();
  private final List<Table> tables = new ArrayList<>();
  private final List<Document> documents = new ArrayList<>();

  /** What was sent is never replaced: a table that has lost it, or a file of somebody's own. */
  private static final String OF_WHAT_WAS_SENT =
      "what was sent is never replaced: put back the sent.csv and orders.csv that name it, or move it elsewhere";

  private static final String OF_A_COPY = "it is never replaced: move it elsewhere first";

  /**
   * A document's bytes and where they go.
   *
   * @param file for its place
   */
  private record Document(Path place, byte[] bytes, Function<Path, NewFile> file) {}

  /** A table and the folder that it lies in. */
  private record Table(Path folder, TableText text) {

    void into(NewFiles files) {
      files.with(NewFile.at(folder.resolve(text.name()), true), text.bytes());
    }
  }

  public Writing(Path job) {
    this.job = job;
  }

  /** These and a table of the job. */
  public Writing with(TableText table) {
    return with(job, table);
  }

  /** These and a table in another folder. */
  Writing with(Path folder, TableText table) {
    tables.add(new Table(folder, table));
    return this;
  }

  /** These and a table that is put in its place before all of them. */
  Writing before(Path folder, TableText table) {
    first.add(new Table(folder, table));
    return this;
  }

  /** These and a document that is kept among what was sent. */
  Writing kept(String name, byte[] bytes) {
    Path place = job.resolve(SentDocument.FOLDER).resolve(name);
    documents.add(new Document(place, bytes, named -> NewFile.once(named, OF_WHAT_WAS_SENT)));
    return this;
  }

  /** These and a document, wherever somebody wants it. */
  public Writing copied(Path place, byte[] bytes, boolean mayReplace) {
    documents.add(new Document(place, bytes, named -> NewFile.at(named, mayReplace)));
    return this;
  }

  /** These and a document where somebody wants it, which never replaces another. */
  public Writing copiedOnce(Path place, byte[] bytes) {
    documents.add(new Document(place, bytes, named -> NewFile.once(named, OF_A_COPY)));
    return this;
  }

  /** The tables among them. */
  List<String> tables() {
    return tables.stream().map(table -> table.text().name()).toList();
  }

  /**
   * Writes all of it.
   *
   * @throws sheathwright.job.table.ProblemsException if one cannot be written; then everything is
   *     as it was
   */
  public void write() {
    List<Path> made = new ArrayList<>();
    boolean isWritten = false;
    try {
      NewFiles files = new NewFiles();
      first.forEach(table -> table.into(files));
      for (Document document : documents) {
        makeFolders(document.place().toAbsolutePath().getParent(), made);
        files.with(document.file().apply(document.place()), document.bytes());
      }
      tables.forEach(table -> table.into(files));
      files.write();
      isWritten = true;
    } finally {
      if (!isWritten) {
        made.forEach(Writing::takeAway);
      }
    }
  }

  /**
   * Makes a folder and those above it that are not there, and remembers them, the deepest first.
   */
  private static void makeFolders(Path folder, List<Path> made) {
    List<Path> missing = new ArrayList<>();
    for (Path at = folder; at != null && !Files.exists(at); at = at.getParent()) {
      missing.add(at);
    }
    made.addAll(0, missing);
    try {
      Files.createDirectories(folder);
    } catch (IOException refused) {
      throw new UncheckedIOException(refused);
    }
  }

  private static void takeAway(Path folder) {
    try {
      Files.deleteIfExists(folder);
    } catch (IOException stays) {
      // an empty folder more, or one that somebody has put something into
    }
  }
}

package sheathwright.workbook.told;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import sheathwright.figure.Choice;
import sheathwright.figure.RefusedException;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.MarkNames;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.View;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;
import sheathwright.life.bill.Share;
import sheathwright.workbook.draw.Photograph;

/** The pictures of a job, as its table names them and its folder holds them. */
public final class Photos {

  private final List<Photo> all;

  private Photos(List<Photo> all) {
    this.all = all;
  }

  /** Of a job whose folder nobody looks into. */
  public static Photos none() {
    return new Photos(List.of());
  }

  /**
   * The pictures of a job, read from its folder. One whose file is missing is known all the same.
   *
   * @param folder that the table's names begin in
   * @throws ProblemsException with every file that is there and cannot be read, and what to do
   *     about it
   */
  public static Photos of(Job job, Path folder) {
    List<Photo> all = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    MarkNames names = MarkNames.of(job.lines(JobTable.MARKS));
    for (Row row : job.lines(JobTable.PHOTOS)) {
      try {
        all.add(photo(all.size() + 1, row, names, folder));
      } catch (RefusedException unreadable) {
        String message = row.of(OrderFields.PHOTO).plain() + ": " + unreadable.getMessage();
        problems.add(
            new Problem(
                JobTable.PHOTOS.file(), row.line().number(), OrderFields.PHOTO.name(), message));
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    return new Photos(all);
  }

  private static Photo photo(int number, Row row, MarkNames names, Path folder) {
    String file = row.of(OrderFields.PHOTO).plain();
    return new Photo(
        number,
        file,
        names.meant(said(row, OrderFields.OF_MARK)),
        said(row, OrderFields.OF_SHEET),
        row.of(OrderFields.VIEW).value(),
        said(row, OrderFields.TAKEN),
        said(row, OrderFields.CAPTION),
        picture(folder, file));
  }

  private static String said(Row row, Field<Choice<String>> field) {
    return row.has(field) ? row.of(field).plain() : "";
  }

  private static Optional<Photograph> picture(Path folder, String name) {
    try {
      Path file = folder.resolve(name);
      if (!Files.isRegularFile(file)) {
        return Optional.empty();
      }
      if (Files.size(file) > Photograph.LARGEST_FILE) {
        throw Photograph.tooLarge(Files.size(file));
      }
      return Optional.of(Photograph.of(Files.readAllBytes(file)));
    } catch (InvalidPathException noName) {
      return Optional.empty();
    } catch (IOException locked) {
      throw new RefusedException("the file cannot be read; see whether it may be opened");
    }
  }

  /** Those of a mark or of any of its places, in the order of the table. */
  public List<Photo> of(String mark, String key) {
    List<String> places = Places.each(key);
    return those(photo -> places.stream().anyMatch(place -> photo.isOf(mark, place)));
  }

  /** Those of any of these marks that are there, each once. */
  public List<Photo> of(List<Share> shares) {
    Set<Photo> all = new LinkedHashSet<>();
    shares.forEach(share -> all.addAll(of(share.mark(), share.key())));
    return all.stream().filter(photo -> photo.picture().isPresent()).toList();
  }

  /** Whether a mark is seen as it was before it was opened, and open. */
  public boolean areBeforeAndOpen(Share share) {
    List<Photo> its = of(List.of(share));
    return List.of(View.BEFORE, View.OPEN).stream()
        .allMatch(view -> its.stream().anyMatch(photo -> photo.view() == view));
  }

  /** All that are there. */
  public List<Photo> there() {
    return those(photo -> photo.picture().isPresent());
  }

  /** Those of no mark and no place. */
  public List<Photo> ofNoMark() {
    return those(photo -> photo.mark().isEmpty() && photo.sheet().isEmpty());
  }

  /** The first of a mark or a place in a view, if its file is there. */
  public Optional<Photograph> shown(String of, String view) {
    return all.stream()
        .filter(photo -> photo.view().word().equals(view))
        .filter(photo -> photo.mark().equals(of) || photo.sheet().equals(of))
        .flatMap(photo -> photo.picture().stream())
        .findFirst();
  }

  /** What each is of and shows, in the order of the table. */
  public List<String> keys() {
    return those(photo -> !photo.mark().isEmpty() || !photo.sheet().isEmpty()).stream()
        .map(
            photo ->
                "%s %s"
                    .formatted(
                        photo.mark().isEmpty() ? photo.sheet() : photo.mark(), photo.view().word()))
        .distinct()
        .toList();
  }

  private List<Photo> those(Predicate<Photo> wanted) {
    return all.stream().filter(wanted).toList();
  }
}

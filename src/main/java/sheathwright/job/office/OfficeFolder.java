package sheathwright.job.office;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a job's office keeps what all its jobs share: the nearest folder above the job that holds
 * firm.csv. Without one it is the folder that the job lies in, where the history lies too. Folders
 * are those of the path as it was given: a job that is a link belongs to the office where the link
 * lies. Whatever stands nearer to the job wins, table by table, and nothing above the office is
 * looked at, nor the root of a disk.
 *
 * @param folders from the job's own to the office's
 */
public record OfficeFolder(List<Path> folders) {

  /** The table that makes a folder an office. */
  public static final String FIRM = "firm.csv";

  /** That of the job in a folder. */
  public static OfficeFolder of(Path job) {
    Path home = job.toAbsolutePath().normalize();
    List<Path> folders = new ArrayList<>(List.of(home));
    while (!Files.exists(last(folders).resolve(FIRM))) {
      Path above = last(folders).getParent();
      if (above == null || above.getNameCount() == 0) {
        return new OfficeFolder(folders.subList(0, Math.min(2, folders.size())));
      }
      folders.add(above);
    }
    return new OfficeFolder(folders);
  }

  private static Path last(List<Path> folders) {
    return folders.get(folders.size() - 1);
  }

  /** The office's own. */
  public Path top() {
    return last(folders);
  }

  /** The nearest file of a name; none, if no folder has one. */
  public Optional<Path> nearest(String file) {
    return nearest(file, 0);
  }

  /** The nearest file of a name above the job; none, if no folder above it has one. */
  public Optional<Path> nearestAbove(String file) {
    return nearest(file, 1);
  }

  private Optional<Path> nearest(String file, int from) {
    return folders.stream()
        .skip(from)
        .map(folder -> folder.resolve(file))
        .filter(Files::exists)
        .findFirst();
  }

  /** A file as it is called from the job's folder: {@code ../prices.csv}. */
  public String name(Path file) {
    return folders.get(0).relativize(file).toString().replace('\\', '/');
  }
}

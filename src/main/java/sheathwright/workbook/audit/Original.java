package sheathwright.workbook.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import sheathwright.job.Estimate;
import sheathwright.job.file.Manifest;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.SentFiles;
import sheathwright.workbook.page.JobBooks;

/**
 * What a file that came back is held against.
 *
 * @param reading what was written
 * @param how where that is known from, in words
 * @param doubt why nobody can vouch for it, if so
 */
record Original(Reading reading, String how, Optional<Finding> doubt) {

  private static final String NOBODY = "nobody can vouch for what was written into this file";

  /**
   * What was written into a file.
   *
   * @param name of the file, for messages
   * @param job that it belongs to, if that is known
   * @throws sheathwright.job.table.ProblemsException if there is nothing to hold it against
   */
  static Original of(String name, byte[] file, Reading now, Optional<JobFolder> job) {
    Optional<byte[]> manifest = Manifest.in(file);
    Optional<Reading> told = manifest.flatMap(ManifestReading::of);
    if (job.isEmpty()) {
      return told.map(
              reading ->
                  doubted(
                      reading,
                      "its own manifest",
                      "its manifest is held against no list of what was sent; give --job JOB"))
          .orElseThrow(
              () ->
                  PackedParts.refused(
                      name,
                      "it carries no manifest, so it can only be held against its job; give --job JOB, the job's folder"));
    }
    String document = told.map(Reading::document).orElseGet(now::document);
    if (!document.isEmpty() && !job.get().isNumberOf(document)) {
      throw PackedParts.refused(
          name,
          "it is %s, which is no document of %s; name its own job with --job"
              .formatted(document, job.get().path()));
    }
    SentFiles sent = new SentFiles(job.get());
    Optional<Original> kept =
        Stream.of(told.map(Reading::document).orElse(""), now.document())
            .flatMap(each -> kept(sent, each).stream())
            .findFirst();
    if (kept.isPresent()) {
      return kept.get();
    }
    if (told.isPresent() && manifest.flatMap(Manifest::hash).filter(sent::vouchFor).isPresent()) {
      return new Original(
          told.get(), "its manifest, whose SHA-256 is in sent.csv", Optional.empty());
    }
    String why =
        manifest.isEmpty()
            ? "it carries no manifest, and no file of its number is kept"
            : "no file of its number is kept, and its manifest is in no list of what was sent";
    return anew(now, new Estimate(job.get().job()), why)
        .or(() -> told.map(reading -> doubted(reading, "its own manifest", why)))
        .orElseThrow(
            () ->
                PackedParts.refused(
                    name,
                    "%s, and it is neither a quote nor an estimate that the tables give; put the file that was sent back into the job's folder sent"
                        .formatted(why)));
  }

  private static Original doubted(Reading reading, String how, String why) {
    return new Original(
        reading, how, Optional.of(Finding.of(Verdict.CANNOT_VOUCH, "file", why, NOBODY)));
  }

  private static Optional<Original> kept(SentFiles sent, String document) {
    return sent.of(document)
        .map(
            file -> {
              String name = String.valueOf(file.path().getFileName());
              Reading whole = BookReading.of(name, file.bytes());
              Reading reading =
                  Manifest.in(file.bytes())
                      .flatMap(ManifestReading::of)
                      .map(told -> told.within(whole))
                      .orElse(whole);
              return new Original(
                  reading,
                  "%s as it went out, %s".formatted(document, file.path()),
                  Optional.empty());
            });
  }

  /** The one of a job's workbooks, written anew from its tables, whose tabs a file has. */
  private static Optional<Original> anew(Reading now, Estimate estimate, String why) {
    JobBooks books = JobBooks.of(estimate);
    Map<Integer, Reading> byTabs = new TreeMap<>();
    for (byte[] book : List.of(books.office(), books.homeowner())) {
      Reading reading = ManifestReading.of(Manifest.in(book).orElseThrow()).orElseThrow();
      Set<String> tabs = new TreeSet<>(reading.panes().keySet());
      tabs.retainAll(now.panes().keySet());
      byTabs.put(tabs.size() * 100 / reading.panes().size(), reading);
    }
    return Optional.of(((TreeMap<Integer, Reading>) byTabs).lastEntry())
        .filter(best -> best.getKey() > 0)
        .map(best -> doubted(best.getValue(), "the job's tables, written anew", why));
  }
}

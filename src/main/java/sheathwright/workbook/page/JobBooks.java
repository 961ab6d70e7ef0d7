package sheathwright.workbook.page;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import sheathwright.job.Estimate;
import sheathwright.job.Refusals;
import sheathwright.job.table.ProblemsException;
import sheathwright.life.found.SheetsSettled;
import sheathwright.life.record.Issue;
import sheathwright.life.record.Revisions;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.home.HomeBook;
import sheathwright.workbook.told.Photos;

/**
 * Both workbooks of a job, laid out in full before either is written, so that a job which cannot be
 * answered leaves no file behind.
 *
 * @param office the bytes of the estimate
 * @param homeowner the bytes of the quote
 */
public record JobBooks(byte[] office, byte[] homeowner) {

  /** The same of an estimate whose photographs nobody looks at. */
  public static JobBooks of(Estimate estimate) {
    return of(estimate, Photos.none());
  }

  /**
   * The workbooks of an estimate, the quote a draft.
   *
   * @throws ProblemsException if a cell of either would hold no value: with every refusal, each
   *     once and with its place; or if marks lead to something that has no price
   */
  public static JobBooks of(Estimate estimate, Photos photos) {
    SheetsSettled settled = priced(estimate);
    return of(() -> HomeBook.of(estimate, photos), () -> JobBook.estimate(estimate, settled));
  }

  /**
   * The workbooks of an estimate that is one of several issues, the quote a draft.
   *
   * @throws ProblemsException if a cell of either would hold no value, or marks lead to something
   *     that has no price
   */
  public static JobBooks of(Estimate estimate, Revisions revisions) {
    SheetsSettled settled = priced(estimate);
    return of(() -> HomeBook.of(estimate), () -> JobBook.estimate(estimate, settled, revisions));
  }

  /**
   * The workbooks of an estimate whose quote goes out.
   *
   * @throws ProblemsException if a cell of either would hold no value, or marks lead to something
   *     that has no price
   */
  public static JobBooks of(Estimate estimate, Photos photos, Issue issue) {
    SheetsSettled settled = priced(estimate);
    return of(
        () -> HomeBook.of(estimate, photos, issue),
        () -> JobBook.estimate(estimate, settled, issue));
  }

  private static JobBooks of(Supplier<HomeBook> quote, Supplier<JobBook> estimate) {
    CompletableFuture<byte[]> meanwhile = CompletableFuture.supplyAsync(() -> quote.get().bytes());
    Refusals refusals = new Refusals();
    Optional<byte[]> office = refusals.tried(() -> estimate.get().bytes());
    Optional<byte[]> homeowner = refusals.tried(() -> joined(meanwhile));
    refusals.raise();
    return new JobBooks(office.orElseThrow(), homeowner.orElseThrow());
  }

  private static SheetsSettled priced(Estimate estimate) {
    SheetsSettled settled = SheetsSettled.of(estimate);
    if (settled.mustBePriced() && !settled.unpriced().isEmpty()) {
      throw new ProblemsException(settled.unpriced());
    }
    return settled;
  }

  private static byte[] joined(CompletableFuture<byte[]> book) {
    try {
      return book.join();
    } catch (CompletionException thrown) {
      throw thrown.getCause() instanceof RuntimeException cause ? cause : thrown;
    }
  }

  /**
   * One of them.
   *
   * @param book that it is laid out in
   * @param pages lays it out
   * @throws ProblemsException if a cell of it would hold no value
   */
  public static byte[] laidOut(Book book, Supplier<byte[]> pages) {
    Refusals refusals = new Refusals();
    Optional<byte[]> bytes = refusals.tried(pages);
    book.refused().forEach(refusals::add);
    refusals.raise();
    return bytes.orElseThrow();
  }
}

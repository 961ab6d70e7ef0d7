package sheathwright.job.season;

import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/**
 * Something made of each of many jobs, on several threads at once, and handed on in the order of
 * the jobs. Only a few are begun ahead of the one that is handed on, so that memory does not grow
 * with the number of jobs; one that is refused stops no other.
 *
 * @param jobs in their order
 * @param threads how many jobs are worked on at once
 */
public record ManyJobs(List<SeasonJob> jobs, int threads) {

  /**
   * What became of one job.
   *
   * @param job its name
   * @param made nothing where it was refused
   * @param refusal why, in one line; empty where it was not
   */
  public record Outcome<T>(String job, Optional<T> made, String refusal) {}

  /**
   * Makes something of each.
   *
   * @param made of one job; on any thread
   * @param taken what became of it; on this thread, in the order of the jobs
   */
  public <T> void each(Function<SeasonJob, T> made, Consumer<Outcome<T>> taken) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      Deque<Future<Outcome<T>>> ahead = new ArrayDeque<>();
      for (SeasonJob job : jobs) {
        if (ahead.size() == 2 * threads) {
          taken.accept(done(ahead.remove()));
        }
        ahead.add(pool.submit(() -> outcome(job, made)));
      }
      while (!ahead.isEmpty()) {
        taken.accept(done(ahead.remove()));
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static <T> Outcome<T> outcome(SeasonJob job, Function<SeasonJob, T> made) {
    try {
      return new Outcome<>(job.name(), Optional.of(job.said(() -> made.apply(job))), "");
    } catch (ProblemsException wrong) {
      return new Outcome<>(job.name(), Optional.empty(), inOneLine(wrong.problems()));
    } catch (RefusedException | UncheckedIOException refused) {
      return new Outcome<>(job.name(), Optional.empty(), refused.getMessage());
    }
  }

  /** The first thing that is wrong with a job, and how to see the rest. */
  private static String inOneLine(List<Problem> problems) {
    int more = problems.size() - 1;
    return problems.get(0)
        + (more > 0 ? Shown.text("; and %,d more, which quote says of this job alone", more) : "");
  }

  private static <T> Outcome<T> done(Future<Outcome<T>> job) {
    try {
      return job.get();
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      if (failed.getCause() instanceof Error fault) {
        throw fault;
      }
      throw new IllegalStateException(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }
}

package sheathwright.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.util.FastMath;
import sheathwright.figure.Shown;

/**
 * How many places of a roof are bad when its zones are not alike: eaves and valleys rot first and
 * are seen least. One house has one share of bad plain places; what was seen anywhere tells of it
 * everywhere. The share is integrated out by the trapezoid rule over its log-odds, halved until
 * nothing changes by more than 1e-9.
 */
public final class ZoneForecast {

  /** Places of the largest roof; each house of the average counts them anew. */
  public static final int MOST_PLACES = 2_000;

  private static final double WIDEST_STEP = 0.02;
  private static final int MOST_DIVIDED = 64;
  private static final double SAME = 1e-9;

  /** A share of bad places so unlikely that it changes no digit: e to the minus 60. */
  private static final double NEGLIGIBLE = 60;

  private final List<Zone> zones;
  private final double alpha;
  private final double beta;
  private final List<Chances> ofZones;
  private final Chances ofAll;

  private ZoneForecast(List<Zone> zones, double alpha, double beta) {
    this.zones = List.copyOf(zones);
    this.alpha = alpha;
    this.beta = beta;
    double widest = Math.min(WIDEST_STEP, width() / 2); // wider ones could step over the peak
    double step = widest;
    List<double[]> now = mixed(step);
    double off = Double.POSITIVE_INFINITY;
    while (off > SAME) {
      step /= 2;
      if (step < widest / MOST_DIVIDED) {
        throw new IllegalStateException(
            Shown.text(
                "the forecast is only sure to %.1e: a house with alpha %s and beta %s",
                off, alpha, beta));
      }
      List<double[]> finer = mixed(step);
      off = difference(now, finer);
      now = finer;
    }
    List<Chances> found =
        now.stream().map(mass -> Chances.of(mass.length - 1, k -> mass[k])).toList();
    this.ofZones = found.subList(0, zones.size());
    this.ofAll = found.get(zones.size());
  }

  /**
   * The forecast of a roof.
   *
   * @param zones all of its places, each in one zone
   * @param alpha of the share of bad plain places in the firm's houses, above 0
   * @param beta of the same, above 0
   */
  public static ZoneForecast of(List<Zone> zones, double alpha, double beta) {
    return new ZoneForecast(zones, alpha, beta);
  }

  /** One zone's chances, in the order of the zones. */
  public List<Chances> ofZones() {
    return ofZones;
  }

  /** The chances of the whole roof. */
  public Chances ofAll() {
    return ofAll;
  }

  /**
   * How far the log-odds of the share may well lie off at least. Told by a history they vary by
   * about 1/alpha + 1/beta; a place that was seen tells of them at most a quarter, at even odds.
   */
  private double width() {
    double told = 1 / (1 / alpha + 1 / beta);
    double seen = zones.stream().mapToInt(Zone::seen).sum() / 4.0;
    return 1 / Math.sqrt(told + seen);
  }

  /** The chances of each zone and of all, averaged over the share of bad places in the house. */
  private List<double[]> mixed(double step) {
    double from = -45 / Math.min(alpha, 1.5);
    double to = 8 + 135 / beta;
    int nodes = (int) Math.ceil((to - from) / step);
    double[] weights =
        IntStream.rangeClosed(0, nodes).mapToDouble(i -> logWeight(from + i * step)).toArray();
    double greatest = IntStream.rangeClosed(0, nodes).mapToDouble(i -> weights[i]).max().orElse(0);
    List<double[]> sums = new ArrayList<>();
    zones.forEach(zone -> sums.add(new double[zone.places() + 1]));
    sums.add(new double[zones.stream().mapToInt(Zone::places).sum() + 1]);
    double whole = 0;
    for (int i = 0; i <= nodes; i++) {
      if (weights[i] > greatest - NEGLIGIBLE) {
        double weight = FastMath.exp(weights[i] - greatest);
        double share = share(from + i * step);
        whole += weight;
        Chances all = Chances.known(0);
        for (int zone = 0; zone < zones.size(); zone++) {
          Chances here = zones.get(zone).chances(share);
          add(sums.get(zone), here, weight);
          all = all.and(here);
        }
        add(sums.get(zones.size()), all, weight);
      }
    }
    double total = whole;
    sums.forEach(sum -> IntStream.range(0, sum.length).forEach(k -> sum[k] /= total));
    return sums;
  }

  private double logWeight(double logOdds) {
    double share = share(logOdds);
    double prior = alpha * logShare(logOdds) + beta * logShare(-logOdds);
    return prior + zones.stream().mapToDouble(zone -> zone.logLikelihood(share)).sum();
  }

  private static double share(double logOdds) {
    return 1 / (1 + FastMath.exp(-logOdds));
  }

  private static double logShare(double logOdds) {
    return logOdds < 0
        ? logOdds - FastMath.log1p(FastMath.exp(logOdds))
        : -FastMath.log1p(FastMath.exp(-logOdds));
  }

  private static void add(double[] sum, Chances chances, double weight) {
    for (int count = 0; count <= chances.most(); count++) {
      sum[count] += weight * chances.of(count);
    }
  }

  private static double difference(List<double[]> one, List<double[]> other) {
    double most = 0;
    for (int i = 0; i < one.size(); i++) {
      for (int k = 0; k < one.get(i).length; k++) {
        most = Math.max(most, Math.abs(one.get(i)[k] - other.get(i)[k]));
      }
    }
    return most;
  }
}

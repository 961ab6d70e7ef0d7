package sheathwright.cutting.stick;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import sheathwright.cutting.program.Certificate;

/**
 * Checks a certificate against its order from the definitions alone, in whole numbers. It knows no
 * solver: it lists what one stick can hold, length by length, and adds up.
 */
public final class StickCertificateCheck {

  private StickCertificateCheck() {}

  /** Whether the certificate proves what it says. */
  public static boolean holds(StickOrder order, Certificate certificate) {
    boolean isWhole =
        certificate.parts() > 0
            && certificate.worth().size() == order.pieces().size()
            && certificate.earning().size() == order.stock().size()
            && LongStream.concat(
                    certificate.worth().stream().mapToLong(Long::longValue),
                    certificate.earning().stream().mapToLong(Long::longValue))
                .allMatch(number -> number >= 0);
    return isWhole && noStickPays(order, certificate) && isSum(order, certificate);
  }

  private static boolean noStickPays(StickOrder order, Certificate certificate) {
    TreeMap<Long, Long> most = mostByLength(order, certificate);
    for (int k = 0; k < order.stock().size(); k++) {
      StockLength stock = order.stock().get(k);
      Map.Entry<Long, Long> held =
          most.floorEntry(stock.length() - 2 * order.trim() + order.kerf());
      BigInteger cost =
          whole(stock.price())
              .multiply(whole(certificate.parts()))
              .add(whole(certificate.earning().get(k)));
      if (stock.available() > 0 && held != null && whole(held.getValue()).compareTo(cost) > 0) {
        return false;
      }
    }
    return true;
  }

  /** The most worth on every length, each piece with a kerf; only lengths where it rises. */
  private static TreeMap<Long, Long> mostByLength(StickOrder order, Certificate certificate) {
    long longest =
        order.stock().stream().mapToLong(StockLength::length).max().orElse(0) + order.kerf();
    TreeMap<Long, Long> most = new TreeMap<>(Map.of(0L, 0L));
    for (int i = 0; i < order.pieces().size(); i++) {
      long length = order.pieces().get(i).length() + order.kerf();
      long worth = certificate.worth().get(i);
      long copies = worth == 0 ? 0 : Math.min(order.pieces().get(i).count(), longest / length);
      for (long copy = 0; copy < copies; copy++) {
        TreeMap<Long, Long> longer = new TreeMap<>(most);
        most.headMap(longest - length, true)
            .forEach((used, sum) -> longer.merge(used + length, sum + worth, Math::max));
        long[] highest = {-1};
        longer.values().removeIf(sum -> sum <= highest[0] || (highest[0] = sum) < 0);
        most = longer;
      }
    }
    return most;
  }

  /** Worths of all pieces, less the most that as many sticks as pieces can earn. */
  private static boolean isSum(StickOrder order, Certificate certificate) {
    BigInteger sum = BigInteger.ZERO;
    int pieces = 0;
    for (int i = 0; i < order.pieces().size(); i++) {
      int count = order.pieces().get(i).count();
      sum = sum.add(product(certificate.worth().get(i), count));
      pieces += count;
    }
    int[] dearestFirst =
        IntStream.range(0, order.stock().size())
            .boxed()
            .sorted(Comparator.comparing(certificate.earning()::get, Comparator.reverseOrder()))
            .mapToInt(Integer::intValue)
            .toArray();
    int left = pieces;
    for (int k : dearestFirst) {
      int sticks = Math.min(left, order.stock().get(k).available());
      sum = sum.subtract(product(certificate.earning().get(k), sticks));
      left -= sticks;
    }
    // Costs are whole: a plan that costs more than one unit less costs at least this.
    return certificate.atLeast() == 0
        || sum.compareTo(product(certificate.parts(), certificate.atLeast() - 1)) > 0;
  }

  private static BigInteger product(long one, long other) {
    return whole(one).multiply(whole(other));
  }

  private static BigInteger whole(long number) {
    return BigInteger.valueOf(number);
  }
}

package sheathwright.cutting.program;

import java.util.List;

/**
 * The reason why no plan costs less, in whole numbers: what each piece is worth, and what one of
 * each stock may earn on top of its price. If nothing that can be cut from one stick is worth more
 * than its price and its earning, then every plan costs at least what the pieces are worth
 * together, less the most that the sticks can earn: those that there are, and no more than pieces.
 *
 * <p>It says nothing of how it was found, and whoever doubts it can check it with a pencil. Does
 * not cover what a search through whole plans proves beyond the linear program.
 *
 * @param parts how many parts one unit of money has; worths and earnings are counted in these
 * @param worth of one copy of each piece of the order, 0 or more
 * @param earning of one of each stock of the order, 0 or more
 * @param atLeast what every plan costs at least, in whole units of money
 */
public record Certificate(long parts, List<Long> worth, List<Long> earning, long atLeast) {

  public Certificate {
    worth = List.copyOf(worth);
    earning = List.copyOf(earning);
  }
}

/**
 * How many sheets will be bad that nobody has seen yet, and what follows for the price.
 *
 * <p>Houses differ: one leak or one fan makes many bad sheets in one and none in the next. So the
 * share of bad sheets is itself uncertain, a beta distribution from the firm's own history, and
 * what lies hidden in one house follows the beta-binomial distribution. The distributions come from
 * a general statistics library; what they lead to is written here.
 *
 * <p>Does not cover neighbors that rot together beyond what the house itself explains, or crews who
 * find more because they earn on it. A forecast informs a price; marks and photographs decide the
 * bill.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.forecast;

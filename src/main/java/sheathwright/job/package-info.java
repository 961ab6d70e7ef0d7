/**
 * One job: its tables read and checked, everything worked out from them, and one function filled
 * down a table. Here the trade rooms first meet.
 *
 * <p>Does not cover where each sheet lies, marks on the deck, change orders, or a forecast of what
 * may be found.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job;

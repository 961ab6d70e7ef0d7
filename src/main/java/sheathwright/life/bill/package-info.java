/**
 * What was agreed, what each change order asks for, what is paid when and billed at the end, and
 * that no mark is lost on the way; all of it in figures, so that documents keep it live.
 *
 * <p>Sources: the user's own tables; the arithmetic of bills. Does not cover what a contract has to
 * say by law, nor what an insurer pays.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life.bill;

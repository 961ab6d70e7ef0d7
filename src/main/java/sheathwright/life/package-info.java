/**
 * The life of a job after its price: what was agreed, what each change order asks for, what is
 * billed at the end, and that no mark is lost on the way.
 *
 * <p>Sources: the user's own tables; the arithmetic of bills. Does not cover what a contract has to
 * say by law.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life;

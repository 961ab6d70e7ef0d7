/**
 * What is allowed in a job and no firm means, be it in one table or in the job as a whole: it is
 * asked about, and never refused.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life.doubt;

/**
 * Commands about all jobs of a firm at once: what each has come to, and what they teach the rates.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.cli.firm;

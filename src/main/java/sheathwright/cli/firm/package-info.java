/**
 * Commands about all jobs of a firm at once: what each has come to, and what they teach the rates.
 */
package sheathwright.cli.firm;

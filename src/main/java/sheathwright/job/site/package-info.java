/**
 * Where a house stands and which code holds there, said once: what follows from it for nails,
 * clips, uplift, sag and snow, and what an inspector will ask.
 *
 * <p>Sources: those of the functions that it asks. Does not cover what a state or town has changed.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.site;

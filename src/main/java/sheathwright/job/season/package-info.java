/**
 * The jobs of a season: their tables in one folder, told apart by a column {@code job}, or a folder
 * of job folders. Each comes out as the tables of one job, whose reader knows nothing of the
 * others.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.season;

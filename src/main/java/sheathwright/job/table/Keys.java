package sheathwright.job.table;

/**
 * The headings of a table of two columns, the first of which names what stands in the second.
 *
 * @param key heading of the first
 * @param value heading of the second
 */
public record Keys(String key, String value) {}

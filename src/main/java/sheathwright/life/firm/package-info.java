/**
 * All jobs of a firm: what each has come to, and what they teach its rates.
 *
 * <p>Sources: the firm's own tables; a line by least squares, the exact limits of a share. Does not
 * cover why a crew was slow or a house was bad: rows are counted, nobody is judged.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life.firm;

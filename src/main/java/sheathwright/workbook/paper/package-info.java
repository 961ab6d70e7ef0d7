/**
 * The documents of a job's life as workbooks: change order, invoice, deck record, with the
 * photographs and maps that belong to them.
 *
 * <p>Sources: the nouns of the room {@code life}. Does not cover what a contract has to say by law.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.paper;

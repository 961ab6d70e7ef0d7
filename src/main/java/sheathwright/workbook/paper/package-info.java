/**
 * The documents of a job's life as workbooks: change order, invoice, deck record, with the
 * photographs and maps that belong to them.
 *
 * <p>Sources: the nouns of the room {@code life}. Does not cover what a contract has to say by law.
 */
package sheathwright.workbook.paper;

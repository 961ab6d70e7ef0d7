/**
 * What papers that leave the house are made of: numbers that are told and not worked out, sheets of
 * paper that go on where one is full, photographs.
 *
 * <p>Sources: the tables of a job. Does not cover what any one paper says.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.told;

/**
 * The reader in front of the Java shell: what an estimator types, taken apart by tokens, read as a
 * small tree, and evaluated through the catalog without a compiler; or, where it is Java, rewritten
 * into Java.
 *
 * <p>Knows nothing of the shell: the session around it is seen through {@code Reader.Around}. Does
 * not cover types, statements and lambdas, which stay Java.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.repl.line;

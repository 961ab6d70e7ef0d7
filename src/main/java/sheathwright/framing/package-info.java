/**
 * Old rafters, their sisters, and what stops a repair. Each has a corner of its own. Everything
 * here is screening: local code and a licensed engineer decide.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.framing;

/**
 * Old rafters, their sisters, and what stops a repair. Each has a corner of its own. Everything
 * here is screening: local code and a licensed engineer decide.
 */
package sheathwright.framing;

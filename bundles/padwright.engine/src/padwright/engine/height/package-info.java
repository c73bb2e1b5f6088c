/**
 * Bringing a pad to height: what the full shims must sum to, which pieces from stock make it, and how sure that is.
 */
package padwright.engine.height;

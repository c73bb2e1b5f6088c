/**
 * Levelling a pad with partial shims: how far a piece lifts the face, and which pieces leave the least spread, proved.
 */
package padwright.engine.levelling;

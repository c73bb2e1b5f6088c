/**
 * The gap between pad and rim around the clock: readings as intervals, the smoothest profile that agrees with them,
 * and its parts in trade words.
 */
package padwright.engine.rim;

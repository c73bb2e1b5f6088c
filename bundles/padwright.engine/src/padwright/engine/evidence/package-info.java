/**
 * What readings of a feeler tell of a rim: not an interval but evidence, weighed against what is known of such rims, over
 * all rounds since the pad was fitted, with the film that was in place at each. The answer is a sample of rims, all of
 * which may be the one under the pad.
 */
package padwright.engine.evidence;

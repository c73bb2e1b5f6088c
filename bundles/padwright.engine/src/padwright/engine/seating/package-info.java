/**
 * What to do under a pad: of the film in stock, the pieces in place and the full shims, the change that makes it likeliest
 * that the pad closes all around, over a sample of the rims that the readings leave possible.
 */
package padwright.engine.seating;

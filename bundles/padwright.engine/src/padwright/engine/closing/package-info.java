/**
 * How a key closes: it turns on its hinge until the face of its pad first meets the rim, so that a change of height
 * tilts the seat instead of being swallowed. Derived here from the geometry of a turning lever; pressing harder is not
 * modelled.
 */
package padwright.engine.closing;

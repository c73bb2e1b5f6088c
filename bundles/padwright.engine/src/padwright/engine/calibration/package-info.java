/**
 * A shop's own value of a pad's stiffness, from readings before and after known pieces of film were placed.
 */
package padwright.engine.calibration;

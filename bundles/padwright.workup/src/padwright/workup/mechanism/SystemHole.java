package padwright.workup.mechanism;

import java.math.BigDecimal;
import java.util.Optional;

import padwright.engine.length.Length;

/**
 * A tone hole of a key system, as the mechanism names it.
 *
 * @param name its own name, or that of the key with whose row it is written
 * @param joint the joint it is on, if the system has any
 * @param at distance of its middle from the upper end of the body, negative above it; nothing where not said
 * @param around degrees around the tube, clockwise seen from the upper end, 0 on top
 */
public record SystemHole(String name, Optional<String> joint, Optional<Length> at, BigDecimal around) {
}

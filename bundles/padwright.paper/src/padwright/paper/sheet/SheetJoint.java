package padwright.paper.sheet;

import java.util.Optional;

import padwright.engine.length.Length;

/**
 * A joint of a layout.
 *
 * @param name as people see it
 * @param length of its bore; empty if not said
 * @param width of its bore at its lower end, by which its surface is unrolled; empty if not said
 */
public record SheetJoint(String name, Optional<Length> length, Optional<Length> width) {
}

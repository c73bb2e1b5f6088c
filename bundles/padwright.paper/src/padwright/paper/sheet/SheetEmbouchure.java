package padwright.paper.sheet;

import java.util.Optional;

import padwright.engine.length.Length;

/**
 * The hole that is blown across.
 *
 * @param position of its middle from the upper end of the joint
 * @param length along the tube
 * @param width across the tube
 * @param chimney how high it is; empty if not said
 * @param cork distance of the face of the cork from its middle; empty if not said
 */
public record SheetEmbouchure(Length position, Length length, Length width, Optional<Length> chimney,
		Optional<Length> cork) {
}

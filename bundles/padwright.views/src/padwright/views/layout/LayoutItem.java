package padwright.views.layout;

import java.math.BigDecimal;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.keysystem.Titled;
import padwright.views.Figures;

/**
 * Something of a system as the layout shows it.
 *
 * @param kind a key with its own hole, a cup over a hole written elsewhere, a lever, a hole, a touch or a rod
 * @param thing of the model
 * @param placed what has the place that is moved with it: itself, or the hole that its cup is over
 * @param along of its middle from the upper end of the instrument; nothing where not said
 * @param around degrees around the tube, clockwise seen from the upper end, 0 on top
 * @param reach half of its length along the tube: radius of a cup or hole, half a rod
 * @param hole inside diameter of the hole, if any is known
 * @param chimney from the bore to the rim
 * @param closed whether it rests closed
 */
public record LayoutItem(LayoutKind kind, Titled thing, Titled placed, String label, Optional<Length> along,
		BigDecimal around, Length reach, Optional<Length> hole, Length chimney, boolean closed, LayoutOrigin origin) {

	/** Names it in the drawing. */
	public String id() {
		return kind.group() + ":" + thing.getName();
	}

	public boolean isKey() {
		return kind == LayoutKind.KEY || kind == LayoutKind.CUP || kind == LayoutKind.LEVER;
	}

	double radius() {
		return Figures.mm(reach);
	}

	LayoutItem at(Length place, BigDecimal angle) {
		return new LayoutItem(kind, thing, placed, label, Optional.of(place), angle, reach, hole, chimney, closed, origin);
	}
}

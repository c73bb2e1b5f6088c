package padwright.workup.service;

import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.systems.EffectiveKey;

/**
 * The rim under a pad.
 *
 * @param radius of the middle of the rim's land
 * @param width of the land, what the air has to pass
 * @param assumed whether the key system says no width, so that {@link #USUAL_WIDTH} stands in
 */
public record KeyRim(Length radius, Length width, boolean assumed) {

	/** Width of a rim's land where a key system says none (an assumption of ours; no source). */
	public static final Length USUAL_WIDTH = Length.millimetres("1");

	/** The rim of a key from the inside diameter and rim width of its hole; nothing without both above nothing. */
	public static Optional<KeyRim> of(EffectiveKey key) {
		Length width = key.rimWidth().orElse(USUAL_WIDTH);
		return key.holeDiameter().filter(inside -> width.signum() > 0 && inside.signum() > 0)
				.map(inside -> new KeyRim(new Length(inside.plus(width).nanometres() / 2), width,
						key.rimWidth().isEmpty()));
	}
}

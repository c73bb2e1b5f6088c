package padwright.engine.acoustics;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A layout brought in tune.
 *
 * @param changes in m of the dimensions that were free, in the order of the layout's
 * @param before how the notes sounded
 * @param after how they sound now
 */
public record LayoutFit(Layout layout, Map<Dimension, Double> changes, List<NoteSound> before, List<NoteSound> after) {

	/**
	 * Changes dimensions within their limits so that notes come nearest to where they should be: the least sum of
	 * squared cents, and of squared changes, of which a millimetre counts as much as 0.3 cents of one note. A note is
	 * taken at the resonance nearest to it.
	 *
	 * @param notes one at least
	 * @param free limits of the dimensions that may change; they must hold the size that is there, and holes must keep
	 *        their order
	 * @throws IllegalArgumentException if the limits do not allow that, or a note has no resonance
	 */
	public static LayoutFit of(Layout layout, SoundModel model, List<TargetNote> notes, Map<Dimension, Limits> free) {
		LayoutSearch search = new LayoutSearch(layout, model, notes, free);
		Layout tuned = layout.with(search.tuned());
		Map<Dimension, Double> changes = new LinkedHashMap<>();
		layout.dimensions().forEach((dimension, size) -> {
			if (free.containsKey(dimension)) {
				changes.put(dimension, tuned.dimensions().get(dimension) - size);
			}
		});
		return new LayoutFit(tuned, changes, new Instrument(layout, model).sound(notes),
				new Instrument(tuned, model).sound(notes));
	}
}

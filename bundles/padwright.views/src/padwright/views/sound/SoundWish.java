package padwright.views.sound;

import java.util.Map;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.mechanism.Pressing;
import padwright.model.keysystem.KeySystem;

/**
 * What is to be worked out for the view.
 *
 * @param moved by how much holes are being dragged down, by their names; empty while nothing is dragged
 * @param note the name of the fingering that is chosen
 * @param pressed what is pressed instead of a note; with neither the first note counts
 */
public record SoundWish(KeySystem system, Map<String, Length> moved, Optional<String> note, Optional<Pressing> pressed) {

	public SoundWish {
		moved = Map.copyOf(moved);
	}
}

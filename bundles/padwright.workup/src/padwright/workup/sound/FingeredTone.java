package padwright.workup.sound;

import padwright.engine.acoustics.TargetNote;
import padwright.engine.pitch.NoteName;
import padwright.model.keysystem.Purpose;
import padwright.workup.mechanism.SystemFingering;

/**
 * A fingering with the pitch that it should have and how it covers the holes.
 *
 * @param note labelled with the name of the fingering
 */
public record FingeredTone(SystemFingering fingering, TargetNote note) {

	/** As in {@code F♯4/trill from E}. */
	public String name() {
		return fingering.name();
	}

	/** Whether it is the fingering by which the scale is judged. */
	public boolean isUsual() {
		return fingering.fingering().getPurpose() == Purpose.USUAL;
	}

	/** As written, in cents above MIDI number 0. */
	public int writtenCents() {
		return NoteName.parse(fingering.note()).midi() * 100 + fingering.cents().intValue();
	}
}

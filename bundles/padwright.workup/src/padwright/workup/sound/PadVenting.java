package padwright.workup.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import padwright.engine.acoustics.Hole;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.NoteSound;
import padwright.engine.acoustics.Venting;

/**
 * How far a pad is raised over its hole, and what that does to the usual notes that sound with it open.
 *
 * @param key the name of its key
 * @param rise in mm
 * @param isAssumed whether the key system says no rise
 * @param ventings one for each note, the lowest first
 */
public record PadVenting(String key, double rise, boolean isAssumed, List<Venting> ventings) {

	private static final double MILLIMETRES = 1000;
	private static final double TENTH = 0.1;

	public PadVenting {
		ventings = List.copyOf(ventings);
	}

	/**
	 * All pads that some usual note opens, from the head down.
	 *
	 * @throws java.util.NoSuchElementException if the system has no air column
	 */
	public static List<PadVenting> of(SystemSound system) {
		Instrument instrument = system.instrument().orElseThrow();
		List<NoteSound> scale = ScaleSound.of(system).scale().stream().map(ToneSound::sound).toList();
		List<PadVenting> pads = new ArrayList<>();
		for (Hole hole : instrument.layout().holes()) {
			hole.cup().ifPresent(cup -> system.keyOver(hole.name()).ifPresent(key -> {
				List<Venting> ventings = Venting.of(instrument, scale, hole.name());
				if (!ventings.isEmpty()) {
					pads.add(new PadVenting(key, cup.rise() * MILLIMETRES, system.assumedRises().contains(key), ventings));
				}
			}));
		}
		return pads;
	}

	/** What it does to each note as it is. */
	public List<NoteVenting> notes() {
		return notes(rise);
	}

	/** What it would do to each note with the pad raised so many mm; notes that do not sound then are left out. */
	public List<NoteVenting> notes(double millimetres) {
		return ventings.stream().flatMap(venting -> note(venting, millimetres).stream()).toList();
	}

	/** The note that is flattened most; nothing where none sounds. */
	public Optional<NoteVenting> worst() {
		return notes().stream().min(Comparator.comparingDouble(NoteVenting::cents));
	}

	/** The rise in mm from which on nothing is heard of the pad; nothing where it is heard at 20 mm. */
	public Optional<Double> enough() {
		return Venting.enough(ventings).map(metres -> metres * MILLIMETRES);
	}

	private static Optional<NoteVenting> note(Venting venting, double millimetres) {
		Optional<Venting.Effect> higher = venting.at((millimetres + TENTH) / MILLIMETRES);
		return venting.at(millimetres / MILLIMETRES).flatMap(here -> higher.map(there -> new NoteVenting(
				venting.note().label(), here.cents(), here.decibels(), there.cents() - here.cents())));
	}
}

package padwright.workup.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import padwright.engine.acoustics.Cover;
import padwright.engine.acoustics.Hole;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.Layout;
import padwright.engine.acoustics.NoteSound;
import padwright.engine.acoustics.SoundModel;
import padwright.engine.acoustics.TargetNote;
import padwright.engine.acoustics.Venting;
import padwright.workup.remember.Remembered;

/**
 * A pad that is raised so little that a usual note of the first two octaves is flat by it. Asked at every stroke in a key
 * system, so answers are remembered by all that they go by.
 *
 * @param key the name of its key
 * @param note the one that it flattens most of those that are flat
 * @param cents by which it flattens it
 * @param enough the rise in mm from which on it flattens no note by more than is noticed; nothing where 20 mm do not do
 */
public record LowRise(String key, String note, double cents, Optional<Double> enough) {

	/** About the least change of a pitch that is noticed: N. J. Hill and I. R. Summers, J. Acoust. Soc. Am. (2007). */
	private static final double NOTICED_CENTS = 10;
	/** A note that is nearer to its pitch is not called flat (an assumption of ours; no source). */
	private static final double FLAT_CENTS = 5;
	/** The forks of the third one the model knows too little of. */
	private static final int TRUSTED_OCTAVES = 2;
	private static final double MILLIMETRES = 1000;
	/** More than all instruments of a shop. */
	private static final int REMEMBERED = 40;
	private static final Remembered<Question, List<LowRise>> KNOWN = new Remembered<>(REMEMBERED, Question::answer);

	/** Those among the pads of some keys, from the head down; none where the system has no air column. */
	public static List<LowRise> of(SystemSound system, Set<String> keys) {
		return system.instrument().map(instrument -> KNOWN.of(question(system, instrument.layout(), keys)))
				.orElse(List.of());
	}

	private static Question question(SystemSound system, Layout layout, Set<String> keys) {
		List<FingeredTone> scale = ScaleSound.scale(system.tones());
		List<PadOver> pads = layout.holes().stream().filter(hole -> hole.cup().isPresent()).map(Hole::name)
				.flatMap(hole -> system.keyOver(hole).filter(keys::contains).map(key -> new PadOver(key, hole)).stream())
				.toList();
		return new Question(layout, system.model(), scale.stream().map(FingeredTone::note).toList(),
				(int) scale.stream().filter(tone -> ScaleSound.octave(tone, system.tones()) <= TRUSTED_OCTAVES).count(),
				pads);
	}

	private record PadOver(String key, String hole) {

		/** Whether it hangs over its hole while a note sounds. */
		private boolean isOpen(TargetNote note) {
			return note.fingering().over(hole) instanceof Cover.Free;
		}
	}

	/** @param trusted how many notes of the scale are judged, the lowest */
	private record Question(Layout layout, SoundModel model, List<TargetNote> scale, int trusted, List<PadOver> pads) {

		private List<LowRise> answer() {
			Instrument instrument = new Instrument(layout, model);
			List<TargetNote> vented = scale.subList(0, trusted).stream()
					.filter(note -> pads.stream().anyMatch(pad -> pad.isOpen(note))).toList();
			List<NoteSound> flat = instrument.played(vented).stream()
					.filter(sound -> sound.cents().filter(cents -> cents < -FLAT_CENTS).isPresent()).toList();
			List<LowRise> low = new ArrayList<>();
			pads.forEach(pad -> worst(pad, instrument, flat).ifPresent(worst -> low.add(new LowRise(pad.key(),
					worst.note(), -worst.cents(), enough(pad, instrument)))));
			return low;
		}

		private record Flattened(String note, double cents) {
		}

		private Optional<Flattened> worst(PadOver pad, Instrument instrument, List<NoteSound> flat) {
			double rise = layout.holes().stream().filter(hole -> hole.name().equals(pad.hole())).findFirst()
					.flatMap(Hole::cup).orElseThrow().rise();
			return Venting.of(instrument, flat, pad.hole()).stream()
					.flatMap(venting -> venting.at(rise)
							.map(effect -> new Flattened(venting.note().label(), effect.cents())).stream())
					.filter(flattened -> flattened.cents() < -NOTICED_CENTS)
					.min(Comparator.comparingDouble(Flattened::cents));
		}

		private Optional<Double> enough(PadOver pad, Instrument instrument) {
			List<TargetNote> vented = scale.stream().filter(pad::isOpen).toList();
			return Venting.least(Venting.of(instrument, instrument.played(vented), pad.hole()),
					effect -> effect.cents() > -NOTICED_CENTS).map(metres -> metres * MILLIMETRES);
		}
	}
}

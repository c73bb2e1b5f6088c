package padwright.workup.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;

import padwright.engine.acoustics.Dimension;
import padwright.engine.acoustics.Hole;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.Measure;
import padwright.engine.acoustics.NoteSound;
import padwright.engine.acoustics.Resonance;

/**
 * How all fingerings of a system sound.
 *
 * @param notes in the order of the system
 */
public record ScaleSound(List<ToneSound> notes) {

	private static final int OCTAVE = 1200;
	private static final double TENTH_OF_A_MILLIMETRE = 1e-4;
	private static final List<Measure> OF_HOLES = List.of(Measure.PLACE, Measure.DIAMETER, Measure.CHIMNEY);

	public ScaleSound {
		notes = List.copyOf(notes);
	}

	/** @throws java.util.NoSuchElementException if the system has no air column */
	public static ScaleSound of(SystemSound system) {
		return of(system, system.instrument().orElseThrow());
	}

	/** How the fingerings of a system sound on an instrument that may differ from it in its sizes. */
	public static ScaleSound of(SystemSound system, Instrument instrument) {
		List<FingeredTone> tones = system.tones();
		List<NoteSound> sounds = instrument.sound(tones.stream().map(FingeredTone::note).toList());
		return new ScaleSound(IntStream.range(0, tones.size()).mapToObj(
				index -> new ToneSound(tones.get(index), sounds.get(index), octave(tones.get(index), tones))).toList());
	}

	/** The octave of a fingering among all of its system, the lowest being 1. */
	static int octave(FingeredTone tone, List<FingeredTone> tones) {
		return Math.max(1, Math.floorDiv(tone.writtenCents(), OCTAVE) - firstOctave(tones) + 1);
	}

	/** That of the lowest C; notes less than half an octave below it count with those above. */
	private static int firstOctave(List<FingeredTone> tones) {
		int lowest = tones.stream().mapToInt(FingeredTone::writtenCents).min().orElse(0);
		return Math.floorDiv(lowest + OCTAVE / 2, OCTAVE);
	}

	/** The scale itself: of each note the first usual fingering, the lowest note first. */
	public List<ToneSound> scale() {
		return scale(notes, ToneSound::tone);
	}

	/** The scale among fingerings, before it is known how they sound. */
	static List<FingeredTone> scale(List<FingeredTone> tones) {
		return scale(tones, tone -> tone);
	}

	private static <T> List<T> scale(List<T> notes, Function<T, FingeredTone> tone) {
		Set<Integer> seen = new HashSet<>();
		return notes.stream().filter(note -> tone.apply(note).isUsual())
				.filter(note -> seen.add(tone.apply(note).writtenCents()))
				.sorted(Comparator.comparingInt(note -> tone.apply(note).writtenCents())).toList();
	}

	/** The octaves of the scale with what sounds in them. */
	public List<OctaveSound> octaves() {
		Map<Integer, List<ToneSound>> byOctave = new TreeMap<>();
		scale().stream().filter(note -> note.sound().played().isPresent())
				.forEach(note -> byOctave.computeIfAbsent(note.octave(), none -> new ArrayList<>()).add(note));
		return byOctave.entrySet().stream().map(octave -> OctaveSound.of(octave.getKey(), octave.getValue())).toList();
	}

	/** What the sizes of the holes do to the notes of the scale, hole by hole from the head down. */
	public List<HoleEffect> holeEffects(Instrument instrument) {
		Map<String, Map<Dimension, Double>> byNote = new LinkedHashMap<>();
		for (ToneSound note : scale()) {
			note.sound().played().map(Resonance::hertz).ifPresent(hertz -> byNote.put(note.tone().name(),
					instrument.centsPerMetre(note.tone().note().fingering(), hertz)));
		}
		return instrument.layout().holes().stream().map(Hole::name)
				.flatMap(hole -> OF_HOLES.stream().map(measure -> effect(hole, measure, byNote))).toList();
	}

	private static HoleEffect effect(String hole, Measure measure, Map<String, Map<Dimension, Double>> byNote) {
		Dimension dimension = new Dimension(Dimension.Part.HOLE, hole, measure);
		Map<String, Double> cents = new LinkedHashMap<>();
		byNote.forEach((note, slopes) -> cents.put(note, TENTH_OF_A_MILLIMETRE * slopes.get(dimension)));
		return new HoleEffect(hole, measure, cents);
	}
}

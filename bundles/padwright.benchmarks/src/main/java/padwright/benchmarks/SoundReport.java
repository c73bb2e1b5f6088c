package padwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.NoteSound;
import padwright.engine.acoustics.Resonance;
import padwright.engine.acoustics.TargetNote;

/** How fast pitches of a flute with 17 holes are computed, on one thread; the last line is for scripts. */
public final class SoundReport {

	private static final int RUNS = 25;
	private static final int POINTS = 2000;

	private SoundReport() {
	}

	public static void main(String[] arguments) {
		List<TargetNote> scale = SoundFlute.scale();
		Instrument flute = SoundFlute.instrument();
		System.out.printf("Java %s, one thread used; a flute of 17 holes (invented), %d dimensions%n",
				Runtime.version(), flute.layout().dimensions().size());
		System.out.printf("A scale of %d notes: %.0f ms cold%n", scale.size(),
				Timing.of(() -> SoundFlute.instrument().sound(scale)).milliseconds());
		double notes = median(() -> SoundFlute.instrument().sound(scale));
		double one = median(() -> SoundFlute.instrument().sound(scale.get(7)));
		double withSlopes = median(() -> slopes(SoundFlute.instrument(), scale));
		double points = median(() -> impedances(flute, scale.get(7)));
		System.out.printf("Impedance: %.0f points a second%n", POINTS / points * 1000);
		System.out.printf("One note: %.1f ms%n", one);
		System.out.printf("The scale with derivatives of every pitch by every dimension: %.0f ms, %.2f times without%n",
				withSlopes, withSlopes / notes);
		print(flute.sound(scale));
		System.out.printf("scale-of-%d-notes-ms: %.0f%n", scale.size(), notes);
	}

	private static Object slopes(Instrument flute, List<TargetNote> scale) {
		List<Object> slopes = new ArrayList<>();
		for (NoteSound sound : flute.sound(scale)) {
			slopes.add(flute.centsPerMetre(sound.note().fingering(), sound.played().orElseThrow().hertz()));
		}
		return slopes;
	}

	private static double impedances(Instrument flute, TargetNote note) {
		double sum = 0;
		for (int point = 0; point < POINTS; point++) {
			sum += flute.impedance(note.fingering(), 200 + point).real();
		}
		return sum;
	}

	private static double median(Supplier<Object> work) {
		List<Double> times = new ArrayList<>();
		for (int run = 0; run < RUNS; run++) {
			times.add(Timing.of(work).milliseconds());
		}
		return Timing.median(times.subList(RUNS / 3, RUNS));
	}

	private static void print(List<NoteSound> sounds) {
		System.out.printf("%n%-6s%12s%10s%10s%12s%n", "note", "Hz", "cents", "dB", "over next");
		for (NoteSound sound : sounds) {
			Resonance played = sound.played().orElseThrow();
			System.out.printf("%-6s%12.2f%10.1f%10.1f%12.1f%n", sound.note().label(), played.hertz(),
					sound.cents().orElseThrow(), played.decibels(), sound.strength().orElse(Double.NaN));
		}
		System.out.println();
	}
}

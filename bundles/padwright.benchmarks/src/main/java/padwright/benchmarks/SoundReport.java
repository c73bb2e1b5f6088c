package padwright.benchmarks;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import padwright.engine.acoustics.Dimension;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.Layout;
import padwright.engine.acoustics.LayoutFit;
import padwright.engine.acoustics.Limits;
import padwright.engine.acoustics.Measure;
import padwright.engine.acoustics.NoteSound;
import padwright.engine.acoustics.Resonance;
import padwright.engine.acoustics.ResonanceCurve;
import padwright.engine.acoustics.TargetNote;

/**
 * How fast pitches of a flute with 17 holes are computed, in processor time of the one thread that does it; the last
 * line is for scripts.
 */
public final class SoundReport {

	private static final int RUNS = 60;
	private static final int POINTS = 1000;
	private static final int LEAKS = 600;
	private static final double MILLION = 1e6;

	private SoundReport() {
	}

	public static void main(String[] arguments) {
		List<TargetNote> scale = SoundFlute.scale();
		TargetNote note = scale.get(7);
		Instrument flute = SoundFlute.instrument();
		System.out.printf("Java %s, processor time of one thread; a flute of 17 holes (invented), %d dimensions%n",
				Runtime.version(), flute.layout().dimensions().size());
		double cold = milliseconds(() -> SoundFlute.instrument().sound(scale));
		double notes = median(() -> SoundFlute.instrument().sound(scale));
		double withSlopes = median(() -> slopes(SoundFlute.instrument(), scale));
		double one = median(() -> SoundFlute.instrument().sound(note));
		double curve = median(() -> ResonanceCurve.of(SoundFlute.instrument(), note.fingering(), 230, 2800));
		double points = median(() -> impedances(flute, note));
		System.out.printf("Impedance: %.0f points a second%n", POINTS / points * 1000);
		System.out.printf("One note: %.1f ms; with its resonance curve, as drawn while a hole is dragged: %.1f ms%n", one,
				one + curve);
		System.out.printf("A scale of %d notes: %.0f ms at first, %.0f ms then (median of %d)%n", scale.size(), cold,
				notes, RUNS / 2);
		System.out.printf("The scale with derivatives of every pitch by every dimension: %.0f ms, %.2f times without%n",
				withSlopes, withSlopes / notes);
		print(flute.sound(scale));
		printFit(flute, scale);
		LeakHearing hearing = new LeakHearing(flute, scale);
		hearing.run(LEAKS, 1);
		System.out.println(hearing);
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
			times.add(milliseconds(work));
		}
		return Timing.median(times.subList(RUNS / 2, RUNS));
	}

	private static double milliseconds(Supplier<Object> work) {
		long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
		work.get();
		return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / MILLION;
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

	/** Every hole 1 mm narrower, then brought in tune again in the first two octaves. */
	private static void printFit(Instrument flute, List<TargetNote> scale) {
		Map<Dimension, Double> narrower = new HashMap<>();
		Map<Dimension, Limits> free = new HashMap<>();
		flute.layout().dimensions().forEach((dimension, size) -> {
			if (dimension.part() == Dimension.Part.HOLE && dimension.measure() == Measure.DIAMETER) {
				narrower.put(dimension, size - 0.001);
				free.put(dimension, new Limits(size - 0.002, size + 0.001));
			}
		});
		Layout start = flute.layout().with(narrower);
		double[] sums = new double[2];
		double milliseconds = milliseconds(() -> {
			LayoutFit fit = LayoutFit.of(start, SoundFlute.MODEL, scale.subList(0, 25), free);
			sums[0] = worst(fit.before());
			sums[1] = worst(fit.after());
			return fit;
		});
		System.out.printf("17 holes 1 mm narrower brought in tune again over 25 notes: %.0f ms, worst note %.1f, then "
				+ "%.1f cents%n", milliseconds, sums[0], sums[1]);
	}

	private static double worst(List<NoteSound> sounds) {
		return sounds.stream().mapToDouble(sound -> Math.abs(sound.cents().orElseThrow())).max().orElseThrow();
	}
}

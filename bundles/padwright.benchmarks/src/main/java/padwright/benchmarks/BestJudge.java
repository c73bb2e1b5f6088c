package padwright.benchmarks;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;

import padwright.engine.diagnosis.Ear;
import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.diagnosis.TrialNotes;

/**
 * Who knows that one pad leaks, how large leaks are, and how the ear errs, and goes by Bayes' rule: nobody finds the right pad
 * more often from the same notes.
 */
final class BestJudge {

	private static final int SIZES = 400;
	/** Pads that weaken every note alike to this many dB, where the ear scatters by as much. */
	private static final double ALIKE = 0.25;

	private final List<String> pads;
	private final Map<String, Map<String, Double>> weakening;
	private final Ear ear;
	private final double[] sizes;

	/** @param size of a leak, drawn as those that are judged */
	BestJudge(List<String> pads, Map<String, Map<String, Double>> weakening, Ear ear, ToDoubleFunction<Random> size) {
		this.pads = pads;
		this.weakening = weakening;
		this.ear = ear;
		Random random = new Random(99);
		sizes = new double[SIZES];
		Arrays.setAll(sizes, index -> size.applyAsDouble(random));
	}

	String likeliest(TrialNotes tried) {
		return pads.stream().max(Comparator.comparingDouble(pad -> chance(pad, tried))).orElseThrow();
	}

	private double chance(String pad, TrialNotes tried) {
		double sum = 0;
		for (double size : sizes) {
			double chance = 1;
			for (NoteFingering note : tried.bad()) {
				chance *= ear.chanceBad(weaker(note.note(), pad, size));
			}
			for (NoteFingering note : tried.good()) {
				chance *= 1 - ear.chanceBad(weaker(note.note(), pad, size));
			}
			sum += chance;
		}
		return sum;
	}

	/** Whether leaks of 1 thou all around are heard alike. */
	boolean areAlike(String one, String other) {
		return weakening.keySet().stream()
				.allMatch(note -> Math.abs(weaker(note, one, 1) - weaker(note, other, 1)) < ALIKE);
	}

	private double weaker(String note, String pad, double size) {
		return 20 * Math.log10(1 + size * weakening.get(note).getOrDefault(pad, 0.0));
	}
}

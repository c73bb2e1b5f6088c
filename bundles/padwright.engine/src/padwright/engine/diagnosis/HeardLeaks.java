package padwright.engine.diagnosis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * What leaking pads do to notes. A leak takes its share of the flow at a resonance, so the pressure that is left is that
 * without leaks over 1 + the sum of sizes times weakenings, to first order in the leaks' admittance.
 *
 * @param weakening by note and pad: by how much a leak of size 1 lessens the strength of the note, as pressure without it
 *        over pressure with it, less 1; a pad that is not named does nothing to that note
 * @param sizes by pad how large its leak may be if it leaks, each as likely as any other, above 0, in any unit; a pad that is
 *        not named has those of {@link #UNKNOWN}
 * @param ear who judges
 */
public record HeardLeaks(Map<String, Map<String, Double>> weakening, Map<String, List<Double>> sizes, Ear ear) {

	/** Of a pad that nobody felt: from a tenth of the leak of 1 thou all around to ten of it (our guess). */
	public static final List<Double> UNKNOWN = List.of(0.1, 0.3, 1.0, 3.0, 10.0);

	static final int DRAWS = 64;
	private static final long SEED = 20_261_129;

	/** @throws IllegalArgumentException if a weakening is below 0, or a pad has no size or one that is not above 0 */
	public HeardLeaks {
		weakening = Map.copyOf(weakening);
		sizes = Map.copyOf(sizes);
		weakening.forEach((note, pads) -> pads.forEach((pad, share) -> require(share >= 0, pad)));
		sizes.forEach((pad, possible) -> {
			require(!possible.isEmpty(), pad);
			possible.forEach(size -> require(size > 0, pad));
		});
	}

	private static void require(boolean right, String pad) {
		if (!right) {
			throw new IllegalArgumentException("the leak of pad " + pad + " needs sizes above 0 that weaken notes");
		}
	}

	/** Whether a note's weakening is known. */
	boolean tells(NoteFingering note) {
		return weakening.containsKey(note.note());
	}

	/** {@link #DRAWS} sizes for each pad, every possible one about as often, the same on every machine. */
	Map<String, double[]> draws(List<String> pads) {
		Map<String, double[]> draws = new TreeMap<>();
		Random random = new Random(SEED);
		for (String pad : pads) {
			List<Double> possible = sizes.getOrDefault(pad, UNKNOWN);
			List<Double> drawn = new ArrayList<>();
			for (int draw = 0; draw < DRAWS; draw++) {
				drawn.add(possible.get(draw * possible.size() / DRAWS));
			}
			Collections.shuffle(drawn, random);
			draws.put(pad, drawn.stream().mapToDouble(Double::doubleValue).toArray());
		}
		return draws;
	}

	/** How likely a note is called bad. @param lost the sum of sizes times weakenings */
	double chanceBad(double lost) {
		return ear.chanceBad(20 * StrictMath.log10(1 + lost));
	}

	double weakening(NoteFingering note, String pad) {
		return weakening.getOrDefault(note.note(), Map.of()).getOrDefault(pad, 0.0);
	}
}

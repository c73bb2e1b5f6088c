package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The search behind {@link LayoutFit}: Gauss and Newton's steps within the limits, shortened as Levenberg and Marquardt
 * do where a step does not help.
 */
final class LayoutSearch {

	private static final double CENTS_PER_METRE = 300;
	private static final int MOST_STEPS = 40;
	/** Of the sum of squares: an improvement by less than this share ends the search. */
	private static final double SETTLED = 1e-6;
	/** Squared cents that no ear hears. */
	private static final double NOTHING = 1e-6;
	private static final double FIRST_DAMPING = 1e-3;
	private static final double MOST_DAMPING = 1e6;

	private final Layout layout;
	private final SoundModel model;
	private final List<TargetNote> notes;
	private final List<Dimension> dimensions = new ArrayList<>();
	private final List<Limits> limits = new ArrayList<>();
	private final List<Double> sizes = new ArrayList<>();

	/**
	 * Notes and changes at some sizes.
	 *
	 * @param residuals cents of the notes, then what the changes count
	 */
	private record State(double[] at, Instrument instrument, List<Resonance> played, double[] residuals) {

		double sum() {
			return Arrays.stream(residuals).map(residual -> residual * residual).sum();
		}
	}

	/** @throws IllegalArgumentException if limits do not hold what is there, or let holes change places */
	LayoutSearch(Layout layout, SoundModel model, List<TargetNote> notes, Map<Dimension, Limits> free) {
		this.layout = layout;
		this.model = model;
		this.notes = notes;
		layout.dimensions().forEach((dimension, size) -> {
			if (free.containsKey(dimension)) {
				add(dimension, free.get(dimension), size);
			}
		});
		if (dimensions.size() < free.size() || notes.isEmpty() || dimensions.isEmpty()) {
			throw new IllegalArgumentException("a fit needs notes, and dimensions that the layout has");
		}
		requireOrder(free);
	}

	private void add(Dimension dimension, Limits within, double size) {
		Sizes.requireBetween(dimension.toString(), size, within.least(), within.most());
		dimensions.add(dimension);
		limits.add(within);
		sizes.add(size);
	}

	private void requireOrder(Map<Dimension, Limits> free) {
		double above = Double.NEGATIVE_INFINITY;
		for (Hole hole : layout.holes()) {
			Limits place = free.get(new Dimension(Dimension.Part.HOLE, hole.name(), Measure.PLACE));
			if ((place == null ? hole.place() : place.least()) < above) {
				throw new IllegalArgumentException("the limits let hole " + hole.name() + " go past the one above it");
			}
			above = place == null ? hole.place() : place.most();
		}
	}

	/** The sizes found. */
	Map<Dimension, Double> tuned() {
		State state = state(sizes.stream().mapToDouble(Double::doubleValue).toArray());
		double damping = FIRST_DAMPING;
		double[][] slopes = slopes(state);
		for (int step = 0; step < MOST_STEPS && damping < MOST_DAMPING && state.sum() > NOTHING; step++) {
			State next = state(step(state, slopes, damping));
			if (next.sum() < state.sum()) {
				boolean isSettled = next.sum() > state.sum() * (1 - SETTLED) - NOTHING;
				state = next;
				if (isSettled) {
					break;
				}
				slopes = slopes(state);
				damping /= 10;
			} else {
				damping *= 10;
			}
		}
		return named(state.at());
	}

	private Map<Dimension, Double> named(double[] at) {
		Map<Dimension, Double> named = new HashMap<>();
		for (int index = 0; index < at.length; index++) {
			named.put(dimensions.get(index), at[index]);
		}
		return named;
	}

	private State state(double[] at) {
		Instrument instrument = new Instrument(layout.with(named(at)), model);
		List<Resonance> played = instrument.played(notes).stream().map(LayoutSearch::played).toList();
		double[] residuals = new double[notes.size() + at.length];
		for (int note = 0; note < notes.size(); note++) {
			residuals[note] = played.get(note).centsAbove(notes.get(note).hertz());
		}
		for (int index = 0; index < at.length; index++) {
			residuals[notes.size() + index] = CENTS_PER_METRE * (at[index] - sizes.get(index));
		}
		return new State(at, instrument, played, residuals);
	}

	private static Resonance played(NoteSound sound) {
		return sound.played().orElseThrow(() -> new IllegalArgumentException(
				"note " + sound.note().label() + " has no resonance within an octave"));
	}

	/** How the residuals grow with each size, a row a residual. */
	private double[][] slopes(State state) {
		double[][] slopes = new double[state.residuals().length][dimensions.size()];
		for (int note = 0; note < notes.size(); note++) {
			Map<Dimension, Double> cents = state.instrument().centsPerMetre(notes.get(note).fingering(),
					state.played().get(note).hertz());
			for (int index = 0; index < dimensions.size(); index++) {
				slopes[note][index] = cents.get(dimensions.get(index));
			}
		}
		for (int index = 0; index < dimensions.size(); index++) {
			slopes[notes.size() + index][index] = CENTS_PER_METRE;
		}
		return slopes;
	}

	private double[] step(State state, double[][] slopes, double damping) {
		int size = dimensions.size();
		double[][] matrix = new double[size][size];
		double[] right = new double[size];
		for (int row = 0; row < slopes.length; row++) {
			for (int index = 0; index < size; index++) {
				right[index] -= slopes[row][index] * state.residuals()[row];
				for (int other = 0; other < size; other++) {
					matrix[index][other] += slopes[row][index] * slopes[row][other];
				}
			}
		}
		double[] least = new double[size];
		double[] most = new double[size];
		for (int index = 0; index < size; index++) {
			matrix[index][index] *= 1 + damping;
			least[index] = limits.get(index).least() - state.at()[index];
			most[index] = limits.get(index).most() - state.at()[index];
		}
		double[] change = new BoxedMinimum(matrix, right, least, most).find();
		double[] next = new double[size];
		Arrays.setAll(next, index -> limits.get(index).within(state.at()[index] + change[index]));
		return next;
	}
}

package padwright.engine.rim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.LengthUnit;

/** The definition of the rim profile, written down for ojAlgo, in thou; amplitudes are times the squared harmonic. */
final class GeneralRimSolver {

	/**
	 * @param shape the gap less its mean at the 24 stations
	 */
	record Answer(double roughness, double[] shape) {
	}

	/** So small that it does not show; without it the general solver may not end. */
	private static final double MEAN_WEIGHT = 1e-7;

	private static final int MOST_ITERATIONS = 500;

	private final ExpressionsBasedModel model = new ExpressionsBasedModel();
	private final List<RimReading> readings;
	private final int order;
	private final List<Variable> amplitudes = new ArrayList<>();
	private final List<Variable> misses = new ArrayList<>();

	private GeneralRimSolver(List<RimReading> readings, boolean mayMiss) {
		this.readings = readings;
		order = RimFit.order(readings);
		for (int i = 0; i <= 2 * order; i++) {
			amplitudes.add(model.newVariable("amplitude" + i));
		}
		for (int i = 0; i < readings.size(); i++) {
			misses.add(model.newVariable("miss" + i).lower(0).upper(mayMiss ? 1_000 : 0));
		}
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			gap("station" + station, station).lower(0);
		}
		IntStream.range(0, readings.size()).forEach(this::bound);
	}

	/** Empty if the general solver gives up. */
	static Optional<Answer> smoothestWithin(List<RimReading> readings) {
		return new GeneralRimSolver(readings, false).smoothest();
	}

	static double leastMiss(List<RimReading> readings) {
		GeneralRimSolver solver = new GeneralRimSolver(readings, true);
		solver.misses.forEach(miss -> miss.weight(1));
		Optimisation.Result result = solver.model.minimise();
		if (!result.getState().isOptimal()) {
			throw new IllegalStateException("the general solver ended " + result.getState());
		}
		return result.getValue();
	}

	static double roughness(RimProfile profile) {
		double sum = 0;
		for (int n = 1; n <= 5; n++) {
			double amplitude = Math.hypot(Harmonic.of(profile, n).cosine(), Harmonic.of(profile, n).sine());
			sum += Math.pow(n, 4) * Math.pow(amplitude / LengthUnit.THOU.nanometres(), 2);
		}
		return sum;
	}

	private Optional<Answer> smoothest() {
		Expression roughness = model.newExpression("roughness").weight(1);
		roughness.set(amplitudes.get(0), amplitudes.get(0), MEAN_WEIGHT);
		for (int i = 1; i < amplitudes.size(); i++) {
			roughness.set(amplitudes.get(i), amplitudes.get(i), 1);
		}
		model.options.iterations_abort = MOST_ITERATIONS;
		Optimisation.Result result = model.minimise();
		if (!result.getState().isOptimal()) {
			return Optional.empty();
		}
		double[] shape = new double[ClockHour.STATIONS];
		double sum = 0;
		for (int i = 1; i < amplitudes.size(); i++) {
			double amplitude = result.doubleValue(i);
			sum += amplitude * amplitude;
			for (int station = 0; station < shape.length; station++) {
				shape[station] += amplitude * wave(i, station);
			}
		}
		return Optional.of(new Answer(sum, shape));
	}

	private void bound(int index) {
		RimReading reading = readings.get(index);
		int station = reading.hour().station();
		gap("above" + index, station).set(misses.get(index), 1).lower(reading.atLeast().inThou());
		reading.atMost().ifPresent(
				bound -> gap("below" + index, station).set(misses.get(index), -1).upper(bound.inThou()));
	}

	private Expression gap(String name, int station) {
		Expression gap = model.newExpression(name);
		for (int i = 0; i < amplitudes.size(); i++) {
			gap.set(amplitudes.get(i), i == 0 ? 1 : wave(i, station));
		}
		return gap;
	}

	private static int harmonic(int amplitude) {
		return (amplitude + 1) / 2;
	}

	/** What one unit of an amplitude's variable adds at a station. */
	private static double wave(int amplitude, int station) {
		double angle = harmonic(amplitude) * 2 * Math.PI * station / ClockHour.STATIONS;
		double wave = amplitude % 2 == 1 ? Math.cos(angle) : Math.sin(angle);
		return wave / Math.pow(harmonic(amplitude), 2);
	}
}

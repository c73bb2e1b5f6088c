package padwright.engine.calibration;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.levelling.Lift;
import padwright.engine.levelling.Stiffness;
import padwright.engine.rim.RimReading;

/**
 * What the readings of one round tell about the lift of its pieces.
 *
 * @param pieces what lifted
 * @param bounds at some hours, several at one hour if it was read more often
 */
record LiftReadings(List<PartialShim> pieces, List<Bound> bounds) {

	/**
	 * Between what the lift at an hour lies, in nm.
	 */
	record Bound(ClockHour hour, Interval lift) {
	}

	/** From every reading before a round's pieces with every one after them at the same hour. */
	static LiftReadings of(CalibrationRound round) {
		return new LiftReadings(round.pieces(), round.before().stream().flatMap(before -> round.after().stream()
				.filter(after -> after.hour().equals(before.hour()))
				.map(after -> new Bound(before.hour(),
						new Interval(low(before) - high(after), high(before) - low(after)))))
				.toList());
	}

	/** A face without a gap may press in by any amount. */
	private static double low(RimReading reading) {
		return reading.atLeast().signum() == 0 ? Double.NEGATIVE_INFINITY : reading.atLeast().nanometres();
	}

	private static double high(RimReading reading) {
		return reading.atMost().map(bound -> (double) bound.nanometres()).orElse(Double.POSITIVE_INFINITY);
	}

	/** The lifts that the model gives at the bounds' hours, in nm. */
	DoubleStream modelled(Stiffness stiffness) {
		long[] lift = lift(stiffness);
		return bounds.stream().mapToDouble(bound -> lift[bound.hour().station()]);
	}

	/** Between what the lifts lie above the modelled ones. */
	Stream<Interval> errors(Stiffness stiffness) {
		long[] lift = lift(stiffness);
		return bounds.stream().map(bound -> bound.lift().minus(lift[bound.hour().station()]));
	}

	private long[] lift(Stiffness stiffness) {
		long[] sum = new long[ClockHour.STATIONS];
		for (PartialShim piece : pieces) {
			long[] lift = Lift.of(piece, stiffness).toNanometres();
			for (int station = 0; station < sum.length; station++) {
				sum[station] += lift[station];
			}
		}
		return sum;
	}
}

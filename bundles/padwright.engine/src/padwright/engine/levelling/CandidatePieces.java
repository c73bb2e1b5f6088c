package padwright.engine.levelling;

import java.util.List;
import java.util.stream.IntStream;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/**
 * Every piece that may be cut, numbered in canonical order: by hour of the start from 12, 1, 2 …, then hours, then
 * thickness. So a list of pieces is in canonical order when its numbers rise, and turning a piece by an hour adds a
 * constant to its number.
 */
final class CandidatePieces {

	static final int STATIONS = ClockHour.STATIONS;
	private static final int HOURS = STATIONS / 2;
	private static final int LENGTHS = HOURS - 1;

	private final List<Length> thicknesses;
	private final int perStart;
	private final int[] lifts;

	/** @param thicknesses in rising order, each once */
	CandidatePieces(List<Length> thicknesses, Stiffness stiffness) {
		this.thicknesses = List.copyOf(thicknesses);
		this.perStart = LENGTHS * thicknesses.size();
		this.lifts = new int[count() * STATIONS];
		IntStream.range(0, perStart).forEach(id -> fillTurns(id, Lift.of(piece(id), stiffness).toNanometres()));
	}

	private void fillTurns(int id, long[] lift) {
		for (int turn = 0; turn < HOURS; turn++) {
			int target = turned(id, turn) * STATIONS;
			for (int station = 0; station < STATIONS; station++) {
				lifts[target + (station + 2 * turn) % STATIONS] = Math.toIntExact(lift[station]);
			}
		}
	}

	/** How many there are; their numbers are 0 to one less. */
	int count() {
		return HOURS * perStart;
	}

	/** The lift of candidate {@code id} at station i is at {@code id * STATIONS + i}, in nm. Shared: read only. */
	int[] lifts() {
		return lifts;
	}

	/** The same piece {@code hours} later on the clock, 0 to 11. */
	int turned(int id, int hours) {
		int turned = id + hours * perStart;
		return turned >= count() ? turned - count() : turned;
	}

	/** Index of the thickness that a candidate is cut from. */
	int film(int id) {
		return id % thicknesses.size();
	}

	/** 1 to 11. */
	int hours(int id) {
		return id % perStart / thicknesses.size() + 1;
	}

	/** In nm. */
	long thickness(int id) {
		return thicknesses.get(film(id)).nanometres();
	}

	PartialShim piece(int id) {
		ClockHour from = new ClockHour(2 * (id / perStart));
		return new PartialShim(new Arc(from, 2 * hours(id)), thicknesses.get(film(id)));
	}
}

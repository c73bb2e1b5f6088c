package padwright.engine.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import padwright.engine.film.PartialShim;
import padwright.engine.levelling.Lift;
import padwright.engine.rim.RimProfile;

/**
 * What becomes of the lift of a piece that does not lie quite where it should: its change for one standard deviation of
 * the hand that places it earlier on the clock, in nm, at the stations counted from the side of the hinge.
 */
final class PieceSlips {

	private static final int STATIONS = RimState.STATIONS;
	/** In half hours; about three degrees (a bench estimate, unverified). */
	static final double DEVIATION = 0.2;

	private final List<PartialShim> pieces = new ArrayList<>();
	private final List<double[]> slips = new ArrayList<>();
	private final PadModel pad;

	PieceSlips(PadModel pad, List<FilmInPlace> films) {
		this.pad = pad;
		films.stream().flatMap(film -> film.pieces().stream()).distinct().forEach(piece -> {
			pieces.add(piece);
			slips.add(slip(piece));
		});
	}

	double[] slip(PartialShim piece) {
		RimProfile lift = Lift.of(piece, pad.stiffness());
		int hinge = pad.hinge().side().station();
		double[] slip = new double[STATIONS];
		Arrays.setAll(slip, station -> DEVIATION / 2 * (lift.nanometresAt((station + hinge + 1) % STATIONS)
				- lift.nanometresAt((station + hinge + STATIONS - 1) % STATIONS)));
		return slip;
	}

	int count() {
		return pieces.size();
	}

	/** The places of the pieces of a film among all. */
	int[] of(FilmInPlace film) {
		return film.pieces().stream().mapToInt(pieces::indexOf).distinct().toArray();
	}

	/** Adds what one piece does when it slipped by so many deviations. */
	void add(int piece, double deviations, double[] lift) {
		double[] slip = slips.get(piece);
		for (int station = 0; station < STATIONS; station++) {
			lift[station] += deviations * slip[station];
		}
	}
}

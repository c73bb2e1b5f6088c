package padwright.engine.evidence;

import java.util.Arrays;

import padwright.engine.film.PartialShim;
import padwright.engine.levelling.Lift;
import padwright.engine.rim.RimProfile;

/** How far film lifts the face at the stations counted from the side of the hinge, for each likely stiffness. */
final class FilmLifts {

	private static final int STATIONS = RimState.STATIONS;

	private final LikelyStiffness stiffness;
	private final int hinge;

	FilmLifts(PadModel pad) {
		stiffness = new LikelyStiffness(pad);
		hinge = pad.hinge().side().station();
	}

	LikelyStiffness stiffness() {
		return stiffness;
	}

	/** In nm, by node and station. */
	double[][] of(FilmInPlace film) {
		double[][] lifts = new double[LikelyStiffness.NODES][STATIONS];
		for (int node = 0; node < lifts.length; node++) {
			Arrays.fill(lifts[node], film.fullShims().nanometres());
			for (PartialShim piece : film.pieces()) {
				add(piece, node, lifts[node]);
			}
		}
		return lifts;
	}

	private void add(PartialShim piece, int node, double[] lifts) {
		RimProfile lift = Lift.of(piece, stiffness.at(node));
		for (int station = 0; station < STATIONS; station++) {
			lifts[station] += lift.nanometresAt((station + hinge) % STATIONS);
		}
	}
}

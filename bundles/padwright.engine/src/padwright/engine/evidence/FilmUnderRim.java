package padwright.engine.evidence;

/** Film in place at one time, laid out for quickly taking its lift off many rims. */
final class FilmUnderRim {

	private final double[][] lifts;
	private final PieceSlips slips;
	private final int[] pieces;
	private final RimState layout;

	FilmUnderRim(FilmInPlace film, FilmLifts lifting, PieceSlips slips, RimState layout) {
		this.lifts = lifting.of(film);
		this.slips = slips;
		this.pieces = slips.of(film);
		this.layout = layout;
	}

	/** The clearance of a rim over this film, into {@code clearance}. */
	void clearance(double[] state, RimShape shape, double[] clearance) {
		LikelyStiffness.between(lifts, state[RimState.STIFFNESS], clearance);
		for (int piece : pieces) {
			slips.add(piece, state[layout.slip(piece)], clearance);
		}
		int from = layout.normals();
		for (int station = 0; station < clearance.length; station++) {
			clearance[station] = shape.scale() * state[from + station] - clearance[station];
		}
	}
}

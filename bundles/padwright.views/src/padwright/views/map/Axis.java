package padwright.views.map;

/** Which way the tube runs on the map. Along is from the head to the foot, across from the far side to the near. */
enum Axis {

	/** Head to the left, far side on top. */
	LYING,
	/** Head on top, far side to the left. */
	STANDING;

	double x(double along, double across) {
		return this == LYING ? along : across;
	}

	double y(double along, double across) {
		return this == LYING ? across : along;
	}
}

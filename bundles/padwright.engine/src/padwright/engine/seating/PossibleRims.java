package padwright.engine.seating;

import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.RimNow;

/** A sample of what may lie under a pad. Stations are counted from the side of the hinge. */
record PossibleRims(List<RimNow> rims) {

	static final int STATIONS = ClockHour.STATIONS;

	int count() {
		return rims.size();
	}

	RimNow rim(int rim) {
		return rims.get(rim);
	}
}

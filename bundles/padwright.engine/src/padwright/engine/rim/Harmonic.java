package padwright.engine.rim;

import java.util.List;
import java.util.stream.IntStream;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * One undulation of a profile: cosine · cos nθ + sine · sin nθ, θ clockwise from 12 o'clock (undulations per
 * revolution as in ISO 12181). From 24 stations, an undulation above 12 cannot be told from one below.
 *
 * @param order n, 1 (tilt), 2 (saddle) … 11
 * @param cosine in nm
 * @param sine in nm
 */
public record Harmonic(int order, double cosine, double sine) {

	/** Peaks halfway between two half hours are seen as such within this part of a half hour. */
	private static final double GRID = 1 << 20;

	/** @throws IllegalArgumentException if the order is not 1 to 11 */
	public Harmonic {
		if (order < 1 || order >= ClockHour.STATIONS / 2) {
			throw new IllegalArgumentException("an order of " + order + " is not 1 to 11");
		}
	}

	/** The undulation in a profile: (2/24) Σ gap · cos nθ and (2/24) Σ gap · sin nθ. */
	public static Harmonic of(RimProfile profile, int order) {
		double cosine = 0;
		double sine = 0;
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			cosine += profile.nanometresAt(station) * FourierBasis.cosine(order, station);
			sine += profile.nanometresAt(station) * FourierBasis.sine(order, station);
		}
		return new Harmonic(order, cosine * 2 / ClockHour.STATIONS, sine * 2 / ClockHour.STATIONS);
	}

	/** Half the way from tight to open, rounded to the nanometre. */
	public Length amplitude() {
		return new Length(Math.round(StrictMath.hypot(cosine, sine)));
	}

	/** The way from tight to open, rounded to the nanometre: what the undulation alone adds to the spread, at most. */
	public Length fromTightToOpen() {
		return new Length(Math.round(2 * StrictMath.hypot(cosine, sine)));
	}

	/** The value at a station in nm. */
	double at(int station) {
		return cosine * FourierBasis.cosine(order, station) + sine * FourierBasis.sine(order, station);
	}

	/**
	 * Where the gap is widest, to the nearest half hour, one position per undulation, from the first after 12 o'clock
	 * on. Meaningless if there is no amplitude.
	 */
	public List<ClockHour> openHours() {
		return hours(0);
	}

	/** Where the gap is narrowest, likewise. */
	public List<ClockHour> tightHours() {
		return hours(StrictMath.PI / order);
	}

	private List<ClockHour> hours(double later) {
		double angle = StrictMath.atan2(sine, cosine) / order + later;
		double halfHours = angle * ClockHour.STATIONS / (2 * StrictMath.PI);
		double pitch = ClockHour.STATIONS / (double) order;
		return IntStream.range(0, order)
				.map(turn -> (int) Math.round(StrictMath.rint((halfHours + turn * pitch) * GRID) / GRID))
				.map(station -> Math.floorMod(station, ClockHour.STATIONS))
				.sorted().mapToObj(ClockHour::new).toList();
	}
}

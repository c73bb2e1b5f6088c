package padwright.engine.rim;

import java.util.Arrays;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * A profile in parts: mean height, tilt, saddle and the rest, and what of its spread a float could cure. The mean and
 * the tilt are the least-squares reference plane of ISO 12781-1.
 *
 * @param height the mean
 * @param tilt first harmonic
 * @param saddle second harmonic
 * @param rest the spread of all harmonics above
 * @param spread the whole profile's
 * @param filmOnly the smallest spread any tilt of the pad can leave (see {@link MinimumZone}): floating only raises or
 *            tilts, so this takes film
 */
public record ProfileSplit(Length height, Harmonic tilt, Harmonic saddle, Length rest, Length spread,
		Length filmOnly) {

	/** The parts of a profile. */
	public static ProfileSplit of(RimProfile profile) {
		Harmonic tilt = Harmonic.of(profile, 1);
		Harmonic saddle = Harmonic.of(profile, 2);
		return new ProfileSplit(profile.mean(), tilt, saddle, rest(profile, tilt, saddle), profile.spread(),
				MinimumZone.of(profile));
	}

	/** The part of the spread that floating could cure; zero or more. */
	public Length floatable() {
		return spread.minus(filmOnly);
	}

	private static Length rest(RimProfile profile, Harmonic tilt, Harmonic saddle) {
		double[] rest = new double[ClockHour.STATIONS];
		for (int station = 0; station < rest.length; station++) {
			rest[station] = profile.nanometresAt(station) - tilt.at(station) - saddle.at(station);
		}
		double widest = Arrays.stream(rest).max().getAsDouble();
		return new Length(Math.round(widest - Arrays.stream(rest).min().getAsDouble()));
	}
}

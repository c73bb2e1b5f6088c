package padwright.engine.rim;

import java.util.Arrays;
import java.util.stream.LongStream;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;

/**
 * The gap between pad face and rim at each of the 24 half-hour stations of the clock, in whole nanometres. May be
 * negative where a residual after shimming presses in. Immutable; equal when every station is.
 */
public final class RimProfile {

	private final long[] nanometres;

	private RimProfile(long[] nanometres) {
		this.nanometres = nanometres;
	}

	/**
	 * The profile with these gaps at 12:00, 12:30, 1:00 … 11:30.
	 *
	 * @throws IllegalArgumentException if there are not 24
	 */
	public static RimProfile ofNanometres(long... gaps) {
		if (gaps.length != ClockHour.STATIONS) {
			throw new IllegalArgumentException(gaps.length + " gaps, not one for each of 24 stations");
		}
		return new RimProfile(gaps.clone());
	}

	/** The gap at a station, 0 (12 o'clock) to 23, in nm. */
	public long nanometresAt(int station) {
		return nanometres[station];
	}

	public Length at(ClockHour hour) {
		return new Length(nanometres[hour.station()]);
	}

	/** The gaps at all stations in nm, a copy. */
	public long[] toNanometres() {
		return nanometres.clone();
	}

	/** Widest less narrowest gap; what the levelling must bring below the seat tolerance. */
	public Length spread() {
		return new Length(stream().max().getAsLong() - stream().min().getAsLong());
	}

	/** Mean gap, rounded to the nanometre. */
	public Length mean() {
		return new Length(Math.round(stream().average().getAsDouble()));
	}

	public LongStream stream() {
		return Arrays.stream(nanometres);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof RimProfile profile && Arrays.equals(nanometres, profile.nanometres);
	}

	@Override
	public int hashCode() {
		return Arrays.hashCode(nanometres);
	}

	@Override
	public String toString() {
		return Arrays.toString(nanometres) + " nm";
	}
}

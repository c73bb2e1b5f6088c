package padwright.engine.leak;

import java.util.stream.IntStream;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

/**
 * A pad on its rim with the key closed.
 *
 * @param key name of the key
 * @param rimRadius middle of the rim, from the centre of the hole, more than 0
 * @param rimWidth how far the air has to go between pad and rim, more than 0
 * @param gap what stays open around the clock; a negative gap presses in and counts as closed
 */
public record SeatedPad(String key, Length rimRadius, Length rimWidth, RimProfile gap) {

	/** @throws IllegalArgumentException if a size of the rim is not positive */
	public SeatedPad {
		if (rimRadius.signum() <= 0 || rimWidth.signum() <= 0) {
			throw new IllegalArgumentException("rim of " + key + " needs a radius and a width above zero");
		}
	}

	/** Slit conductance Σ R Δθ g³ / (12 µ L) over the 24 stations, in m³/(s·Pa), without entry loss. */
	public double conductance(Air air) {
		return slits().mapToDouble(slit -> slit.conductance(air)).reduce(0, Double::sum);
	}

	/** What leaks at a tester's pressure, in mL/min, with entry loss. */
	public double millilitresPerMinute(Tester tester) {
		return slits().mapToDouble(slit -> slit.millilitresPerMinute(tester)).reduce(0, Double::sum);
	}

	private Stream<Slit> slits() {
		double width = Slit.metres(rimRadius) * 2 * Math.PI / ClockHour.STATIONS;
		return IntStream.range(0, ClockHour.STATIONS)
				.mapToObj(station -> new Slit(width, gap.at(new ClockHour(station)), rimWidth));
	}
}

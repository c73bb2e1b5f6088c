package padwright.engine.levelling;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.rim.RimProfile;

/**
 * How far a piece of film lifts the pad's face at each station: the piece's outline seen through the base's
 * {@linkplain Stiffness#transmission transmission}, wave by wave. A model: the feeler decides.
 *
 * <p>Rounded to whole nanometres piece by piece, so that all that is judged afterwards is exact. Turning or mirroring a
 * piece turns or mirrors its lift exactly, because only one half of the lift of a piece that starts at 12 o'clock is
 * ever computed; the rest is copied.
 */
public final class Lift {

	private static final int STATIONS = ClockHour.STATIONS;
	private static final int QUARTERS = 2 * STATIONS;
	private static final double[] COSINE = cosines();

	private Lift() {
	}

	/** The lift of the face at the stations under {@code piece}. */
	public static RimProfile of(PartialShim piece, Stiffness stiffness) {
		long thickness = piece.thickness().nanometres();
		double[] shape = shape(piece.arc().halfHours(), stiffness);
		long[] lift = new long[STATIONS];
		for (int station = 0; station < STATIONS; station++) {
			int turned = (station + piece.arc().from().station()) % STATIONS;
			lift[turned] = Math.round(thickness * shape[station]);
		}
		return RimProfile.ofNanometres(lift);
	}

	/**
	 * The lift per thickness at the stations of an arc of {@code halfHours} from 12 o'clock, not rounded.
	 *
	 * @param halfHours 1 to 23
	 */
	public static double[] shape(int halfHours, Stiffness stiffness) {
		double[] waves = wavesAboutTheMiddle(halfHours, stiffness);
		double[] shape = new double[STATIONS];
		for (int station = 0; station < STATIONS; station++) {
			int mirrored = Math.floorMod(halfHours - station, STATIONS);
			shape[station] = mirrored < station ? shape[mirrored] : sum(waves, 2 * station - halfHours);
		}
		return shape;
	}

	/** Amplitude of every wave of the lift; an arc is symmetric about its middle, so there are cosines only. */
	private static double[] wavesAboutTheMiddle(int halfHours, Stiffness stiffness) {
		Arc arc = new Arc(new ClockHour(0), halfHours);
		double[] waves = new double[Stiffness.HIGHEST_HARMONIC + 1];
		for (int n = 0; n < waves.length; n++) {
			double amplitude = 0;
			for (int station = 0; station < STATIONS; station++) {
				amplitude += arc.quarterHoursCoveredAt(station) * cosine(n * (2 * station - halfHours));
			}
			boolean unpaired = n == 0 || n == STATIONS / 2;
			waves[n] = stiffness.transmission(n) * amplitude / (unpaired ? QUARTERS : STATIONS);
		}
		return waves;
	}

	private static double sum(double[] waves, int quartersFromMiddle) {
		double sum = 0;
		for (int n = 0; n < waves.length; n++) {
			sum += waves[n] * cosine(n * quartersFromMiddle);
		}
		return sum;
	}

	/** Cosine of a number of quarter hours of the clock. */
	private static double cosine(int quarterHours) {
		return COSINE[Math.floorMod(quarterHours, QUARTERS)];
	}

	private static double[] cosines() {
		double[] cosine = new double[QUARTERS];
		for (int quarter = 0; quarter < QUARTERS; quarter++) {
			cosine[quarter] = StrictMath.cos(2 * Math.PI * Math.min(quarter, QUARTERS - quarter) / QUARTERS);
		}
		return cosine;
	}
}

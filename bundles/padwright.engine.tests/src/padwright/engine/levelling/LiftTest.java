package padwright.engine.levelling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;

class LiftTest {

	private static final int STATIONS = 24;

	@Test
	void heightAndTiltPassWhole() {
		for (double lambda : new double[] {0, 0.003, 0.1, 1}) {
			Stiffness stiffness = new Stiffness(lambda);
			assertEquals(1, stiffness.transmission(0));
			assertEquals(1, stiffness.transmission(1));
			for (int n = 2; n <= 12; n++) {
				assertTrue(stiffness.transmission(n) <= stiffness.transmission(n - 1));
			}
		}
	}

	/**
	 * Derived here from the classical ring on an elastic bed (Love; Timoshenko; the formula from memory, unverified):
	 * for n = 2, n²(n²−1)²/(n²+1.35) = 36/5.35, for n = 3, 576/10.35.
	 */
	@Test
	void ringOnAnElasticBed() {
		Stiffness stiffness = new Stiffness(0.1);
		assertEquals(5.35 / (5.35 + 3.6), stiffness.transmission(2), 1e-15);
		assertEquals(10.35 / (10.35 + 57.6), stiffness.transmission(3), 1e-15);
	}

	@Test
	void rangesAreKept() {
		for (double lambda : new double[] {-1e-9, 1.0001, Double.NaN, Double.POSITIVE_INFINITY}) {
			assertThrows(IllegalArgumentException.class, () -> new Stiffness(lambda));
		}
		assertThrows(IllegalArgumentException.class, () -> new Stiffness(0).transmission(13));
		assertThrows(IllegalArgumentException.class, () -> new Stiffness(0).transmission(-1));
	}

	@Test
	void aSoftFaceFollowsTheFilm() {
		SplittableRandom random = new SplittableRandom(1);
		for (int i = 0; i < 500; i++) {
			PartialShim piece = piece(random);
			RimProfile lift = Lift.of(piece, new Stiffness(0));
			for (int station = 0; station < STATIONS; station++) {
				assertEquals(piece.arc().quarterHoursCoveredAt(station) * piece.thickness().nanometres() / 2.0,
						lift.nanometresAt(station), 0.5000001);
			}
		}
	}

	/** The definition by complex sums, straight from the outline's Fourier transform. */
	@Test
	void liftIsTheTransmittedOutline() {
		SplittableRandom random = new SplittableRandom(2);
		for (int i = 0; i < 500; i++) {
			PartialShim piece = piece(random);
			Stiffness stiffness = new Stiffness(random.nextDouble());
			RimProfile lift = Lift.of(piece, stiffness);
			for (int station = 0; station < STATIONS; station++) {
				assertEquals(transmitted(piece, stiffness, station), lift.nanometresAt(station), 0.501);
			}
		}
	}

	private static double transmitted(PartialShim piece, Stiffness stiffness, int station) {
		double sum = 0;
		for (int n = 0; n < STATIONS; n++) {
			double real = 0;
			double imaginary = 0;
			for (int k = 0; k < STATIONS; k++) {
				double covered = piece.arc().quarterHoursCoveredAt(k) / 2.0;
				real += covered * Math.cos(2 * Math.PI * n * k / STATIONS);
				imaginary -= covered * Math.sin(2 * Math.PI * n * k / STATIONS);
			}
			double angle = 2 * Math.PI * n * station / STATIONS;
			double passed = stiffness.transmission(Math.min(n, STATIONS - n));
			sum += passed * (real * Math.cos(angle) - imaginary * Math.sin(angle));
		}
		return piece.thickness().nanometres() * sum / STATIONS;
	}

	@Test
	void turningAndMirroringAreExact() {
		SplittableRandom random = new SplittableRandom(3);
		for (int i = 0; i < 500; i++) {
			PartialShim piece = piece(random);
			Stiffness stiffness = new Stiffness(random.nextDouble());
			long[] lift = Lift.of(piece, stiffness).toNanometres();
			int turn = random.nextInt(STATIONS);
			Arc turned = new Arc(piece.arc().from().plusHalfHours(turn), piece.arc().halfHours());
			Arc mirrored = new Arc(new ClockHour((STATIONS - piece.arc().to().station()) % STATIONS),
					piece.arc().halfHours());
			long[] expectedTurned = new long[STATIONS];
			long[] expectedMirrored = new long[STATIONS];
			for (int station = 0; station < STATIONS; station++) {
				expectedTurned[(station + turn) % STATIONS] = lift[station];
				expectedMirrored[(STATIONS - station) % STATIONS] = lift[station];
			}
			assertArrayEquals(expectedTurned, liftOf(turned, piece, stiffness));
			assertArrayEquals(expectedMirrored, liftOf(mirrored, piece, stiffness));
		}
	}

	private static long[] liftOf(Arc arc, PartialShim piece, Stiffness stiffness) {
		return Lift.of(new PartialShim(arc, piece.thickness()), stiffness).toNanometres();
	}

	private static PartialShim piece(SplittableRandom random) {
		Arc arc = new Arc(new ClockHour(random.nextInt(STATIONS)), random.nextInt(1, STATIONS));
		return new PartialShim(arc, new Length(random.nextInt(1, 200_000)));
	}
}

package padwright.engine.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;

class HeightToleranceTest {

	@Test
	void addsPartsInTheWorstCaseAndSquaresIfIndependent() {
		HeightTolerance tolerance = HeightTolerance.ofParts(List.of(Length.thou("3"), Length.thou("4")));

		assertEquals(new HeightTolerance(Length.thou("7"), Length.thou("5")), tolerance);
		assertEquals(tolerance,
				HeightTolerance.ofParts(List.of(Length.thou("3"), Length.ZERO, Length.thou("4"))));
	}

	@Test
	void isExactWithoutParts() {
		assertEquals(new HeightTolerance(Length.ZERO, Length.ZERO), HeightTolerance.ofParts(List.of()));
	}

	@Test
	void roundsTheRootUpToTheNanometre() {
		SplittableRandom random = new SplittableRandom(5);
		for (int run = 0; run < 1_000; run++) {
			List<Length> parts = IntStream.range(0, 1 + random.nextInt(8))
					.mapToObj(i -> new Length(random.nextLong(1L << 40))).toList();
			BigInteger squares = parts.stream().map(part -> BigInteger.valueOf(part.nanometres()).pow(2))
					.reduce(BigInteger.ZERO, BigInteger::add);

			BigInteger root = BigInteger.valueOf(HeightTolerance.ofParts(parts).rootSumSquare().nanometres());
			assertTrue(root.pow(2).compareTo(squares) >= 0);
			assertTrue(root.subtract(BigInteger.ONE).pow(2).compareTo(squares) < 0);
		}
	}

	@Test
	void refusesANegativePart() {
		assertThrows(IllegalArgumentException.class, () -> HeightTolerance.ofParts(List.of(new Length(-1))));
		assertThrows(IllegalArgumentException.class, () -> new HeightTolerance(Length.ZERO, new Length(1)));
	}
}

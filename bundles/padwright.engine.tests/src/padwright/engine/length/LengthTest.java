package padwright.engine.length;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

class LengthTest {

	/** NIST SP 811, appendix B.8: 1 in = 25.4 mm exactly. */
	@Test
	void holdsTheInchExactly() {
		assertEquals(Length.millimetres("25.4"), Length.thou("1000"));
		assertEquals(Length.of(new BigDecimal("12.7"), LengthUnit.MICROMETRE), Length.thou("0.5"));
		assertEquals(Length.of(new BigDecimal("190.5"), LengthUnit.MICROMETRE), Length.thou("7.5"));
		assertEquals(12_700, Length.thou("0.5").nanometres());
		assertEquals(new BigDecimal("190.5"), Length.thou("7.5").in(LengthUnit.MICROMETRE, 4));
	}

	@Test
	void refusesAFractionOfANanometre() {
		assertThrows(ArithmeticException.class, () -> Length.thou("0.00001"));
		assertThrows(ArithmeticException.class, () -> Length.millimetres("0.0000005"));
	}

	@Test
	void refusesToOverflow() {
		Length longest = new Length(Long.MAX_VALUE);
		assertThrows(ArithmeticException.class, () -> longest.plus(new Length(1)));
		assertThrows(ArithmeticException.class, () -> longest.negated().minus(new Length(2)));
		assertThrows(ArithmeticException.class, () -> longest.times(2));
		assertThrows(ArithmeticException.class, () -> new Length(Long.MIN_VALUE).abs());
		assertThrows(ArithmeticException.class, () -> Length.of(new BigDecimal("1e20"), LengthUnit.THOU));
	}

	@Test
	void addsAndSubtractsLikeWholeNumbers() {
		SplittableRandom random = new SplittableRandom(1);
		for (int run = 0; run < 2_000; run++) {
			long a = random.nextLong(-1L << 40, 1L << 40);
			long b = random.nextLong(-1L << 40, 1L << 40);
			int factor = random.nextInt(-1_000, 1_000);

			assertEquals(a + b, new Length(a).plus(new Length(b)).nanometres());
			assertEquals(new Length(a), new Length(a).plus(new Length(b)).minus(new Length(b)));
			assertEquals(a * factor, new Length(a).times(factor).nanometres());
			assertEquals(new Length(a).abs(), new Length(a).negated().abs());
			assertEquals(Long.compare(a, b), Integer.signum(new Length(a).compareTo(new Length(b))));
			assertEquals(a > b, new Length(a).isLongerThan(new Length(b)));
			assertEquals(a < b, new Length(a).isShorterThan(new Length(b)));
			assertEquals(Long.signum(a), new Length(a).signum());
		}
	}

	@Test
	void isReadBackAsItIsWrittenInEachUnit() {
		SplittableRandom random = new SplittableRandom(2);
		for (int run = 0; run < 2_000; run++) {
			Length length = new Length(random.nextLong(-10_000_000, 10_000_000));

			assertEquals(length, Length.of(length.in(LengthUnit.MILLIMETRE, 6), LengthUnit.MILLIMETRE));
			assertEquals(length, Length.of(length.in(LengthUnit.MICROMETRE, 3), LengthUnit.MICROMETRE));
			Length halfThous = Length.thou("0.5").times(random.nextInt(-100, 100));
			assertEquals(halfThous, Length.of(halfThous.in(LengthUnit.THOU, 1), LengthUnit.THOU));
		}
	}

	@Test
	void isWrittenInThouWithoutTrailingZeros() {
		assertEquals("7.5 thou", Length.thou("7.50").toString());
		assertEquals("100 thou", Length.thou("100").toString());
		assertEquals("0 thou", Length.ZERO.toString());
		assertEquals("-0.5 thou", Length.thou("-0.5").toString());
		assertEquals("0.0039 thou", new Length(100).toString());
	}

	@Test
	void roundsHalfToEven() {
		assertEquals(new BigDecimal("0.2"), Length.thou("0.25").in(LengthUnit.THOU, 1));
		assertEquals(new BigDecimal("0.4"), Length.thou("0.35").in(LengthUnit.THOU, 1));
	}

	@Test
	void hasAFloatingPointThouForModels() {
		assertEquals(7.5, Length.thou("7.5").inThou());
	}

	@Test
	void findsAUnitByItsSymbol() {
		for (LengthUnit unit : LengthUnit.values()) {
			assertEquals(Optional.of(unit), LengthUnit.bySymbol(unit.symbol()));
		}
		assertFalse(LengthUnit.bySymbol("inch").isPresent());
		assertTrue(LengthUnit.bySymbol("THOU").isEmpty());
	}
}

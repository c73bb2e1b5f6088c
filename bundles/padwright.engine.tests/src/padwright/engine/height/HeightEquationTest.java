package padwright.engine.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;

class HeightEquationTest {

	private static final Length CUP = Length.millimetres("3.1");
	private static final Length PAD = Length.thou("98");

	@Test
	void fillsTheCupExactly() {
		HeightEquation equation = new HeightEquation(CUP, Length.thou("15"), Length.thou("1"), Length.thou("20"), PAD);

		assertEquals(new Length(3_100_000 - 102 * 25_400), equation.fullShims());
	}

	@Test
	void isNegativeWherePadAndBackingAreTooHigh() {
		HeightEquation equation = new HeightEquation(PAD, Length.ZERO, Length.ZERO, Length.thou("20"), PAD);

		assertEquals(Length.thou("-20"), equation.fullShims());
	}

	@Test
	void refusesAnImpossiblePart() {
		Length less = new Length(-1);
		assertThrows(IllegalArgumentException.class, () -> equation(Length.ZERO, Length.ZERO, Length.ZERO, PAD));
		assertThrows(IllegalArgumentException.class, () -> equation(CUP, less, Length.ZERO, PAD));
		assertThrows(IllegalArgumentException.class, () -> equation(CUP, Length.ZERO, less, PAD));
		assertThrows(IllegalArgumentException.class, () -> equation(CUP, Length.ZERO, Length.ZERO, Length.ZERO));
		assertThrows(IllegalArgumentException.class,
				() -> new HeightEquation(CUP, Length.ZERO, Length.ZERO, less, PAD));
	}

	private static HeightEquation equation(Length cup, Length gap, Length seat, Length pad) {
		return new HeightEquation(cup, gap, seat, Length.ZERO, pad);
	}

	@Test
	void takesTheMeanGapWherePadAndBackingLieFlush() {
		assertEquals(Length.thou("15"), FlushPad.fullShims(
				List.of(Length.thou("15"), Length.thou("15"), Length.thou("14.5"), Length.thou("15.5"))));
		assertEquals(new Length(2), FlushPad.fullShims(List.of(new Length(2), new Length(3))));
		assertEquals(new Length(4), FlushPad.fullShims(List.of(new Length(4), new Length(3))));
		assertEquals(Length.thou("1"), FlushPad.fullShims(List.of(Length.ZERO, Length.thou("2"))));
	}

	@Test
	void refusesAMeanOfNothing() {
		assertThrows(IllegalArgumentException.class, () -> FlushPad.fullShims(List.of()));
		assertThrows(IllegalArgumentException.class, () -> FlushPad.fullShims(List.of(CUP, new Length(-1))));
	}
}

package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;

class FullShimsTest {

	private static final List<Length> FILMS = thou("0.5 1 1.5 2 3 4 5 7.5");

	private static List<Length> thou(String figures) {
		return Arrays.stream(figures.split(" ")).filter(figure -> !figure.isEmpty()).map(Length::thou).toList();
	}

	private static void assertSwap(String shims, Length change, String out, String in) {
		assertEquals(Optional.of(new FullShims.Swap(thou(out), thou(in))),
				new FullShims(thou(shims)).swap(change, FILMS));
	}

	private static Length less(String thou) {
		return Length.ZERO.minus(Length.thou(thou));
	}

	@Test
	void oneFilmMoreOrOneShimLessIsTheLeastWork() {
		assertSwap("5 5", Length.thou("0.5"), "", "0.5");
		assertSwap("5 5 0.5", less("0.5"), "0.5", "");
		assertSwap("5 5", Length.ZERO, "", "");
	}

	@Test
	void oneShimIsExchangedForOneOrTwo() {
		assertSwap("5 2", less("0.5"), "2", "1.5");
		assertSwap("5", less("0.5"), "5", "4 0.5");
		assertSwap("5 3", Length.thou("2.5"), "5", "7.5");
	}

	@Test
	void whatNoFilmMakesIsNoSwap() {
		assertEquals(Optional.empty(), new FullShims(thou("5 5")).swap(Length.thou("0.3"), FILMS));
		assertEquals(Optional.empty(), new FullShims(thou("")).swap(less("1"), FILMS));
	}
}

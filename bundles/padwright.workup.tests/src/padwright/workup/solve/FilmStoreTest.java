package padwright.workup.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.stock.Assortment;
import padwright.model.stock.FilmSet;
import padwright.model.stock.StockFactory;
import padwright.model.stock.StockedSize;

class FilmStoreTest {

	private static final Length HALF = Length.thou("0.5");
	private static final Length ONE = Length.thou("1");
	private static final Length TWO = Length.thou("2");

	private final FilmSet films = StockFactory.eINSTANCE.createFilmSet();

	private FilmStoreTest size(String number, Integer quantity) {
		if (films.getThicknesses() == null) {
			films.setThicknesses(StockFactory.eINSTANCE.createAssortment());
		}
		StockedSize size = StockFactory.eINSTANCE.createStockedSize();
		size.setSize(number == null ? null : new BigDecimal(number));
		if (quantity != null) {
			size.setQuantity(quantity);
		}
		films.getThicknesses().getSizes().add(size);
		return this;
	}

	@Test
	void countedBlanksRunOut() {
		FilmStore store = FilmStore.of(size("0.5", 2).films);
		assertTrue(store.take(HALF));
		assertTrue(store.take(HALF));
		assertFalse(store.take(HALF));
		assertEquals(List.of(new FilmSupply(HALF, 0)), store.supply());
		store.giveBack(HALF);
		assertTrue(store.take(HALF));
	}

	@Test
	void otherBlanksNever() {
		FilmStore store = FilmStore.of(size("1", null).films);
		for (int count = 0; count < 1000; count++) {
			assertTrue(store.take(ONE));
		}
		store.giveBack(ONE);
		assertEquals(List.of(FilmSupply.unlimited(ONE)), store.supply());
	}

	@Test
	void noneOfAThicknessMayBeLeft() {
		FilmStore store = FilmStore.of(size("0.5", 0).films);
		assertTrue(store.stocks(HALF));
		assertFalse(store.take(HALF));
	}

	@Test
	void whatIsNotStockedIsNeitherTakenNorGivenBack() {
		FilmStore store = FilmStore.of(size("0.5", 1).films);
		assertFalse(store.stocks(ONE));
		assertFalse(store.take(ONE));
		store.giveBack(ONE);
		assertEquals(List.of(HALF), store.thicknesses());
	}

	@Test
	void thicknessesAreInOrderAndInTheirUnit() {
		Assortment sizes = size("2", 1).size("0.0127", 1).size("1", 1).films.getThicknesses();
		assertEquals(List.of(ONE, TWO), FilmStore.of(films).thicknesses());
		sizes.setUnit(LengthUnit.MILLIMETRE);
		assertEquals(List.of(HALF, Length.millimetres("1"), Length.millimetres("2")),
				FilmStore.of(films).thicknesses());
	}

	@Test
	void whatIsNoThicknessIsLeftOut() {
		assertEquals(List.of(), FilmStore.of(films).thicknesses());
		assertEquals(List.of(ONE), FilmStore.of(size("0", 5).size(null, 5).size("1", 5).films).thicknesses());
	}

	@Test
	void takingAndGivingBackCountsLikeATally() {
		SplittableRandom random = new SplittableRandom(1);
		FilmStore store = FilmStore.of(size("0.5", 3).size("1", 1).size("2", 7).films);
		Map<Length, Integer> tally = new HashMap<>(Map.of(HALF, 3, ONE, 1, TWO, 7));
		for (int step = 0; step < 2000; step++) {
			Length film = List.of(HALF, ONE, TWO).get(random.nextInt(3));
			if (random.nextBoolean()) {
				assertEquals(tally.get(film) > 0, store.take(film));
				tally.compute(film, (key, left) -> Math.max(0, left - 1));
			} else {
				store.giveBack(film);
				tally.merge(film, 1, Integer::sum);
			}
			store.supply().forEach(supply -> assertEquals(tally.get(supply.thickness()), supply.pieces()));
		}
	}
}

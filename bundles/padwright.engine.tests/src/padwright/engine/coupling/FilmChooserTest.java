package padwright.engine.coupling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;

import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

class FilmChooserTest {

	/** Every multiset of up to three films, counted out one blank at a time, is no nearer and no fewer. */
	@RepeatedTest(300)
	void noOtherChoiceIsNearerOrFewer(RepetitionInfo repetition) {
		SplittableRandom random = new SplittableRandom(4_000 + repetition.getCurrentRepetition());
		List<FilmSupply> films = randomStock(random);
		Length travel = new Length(random.nextLong(0, 600_000));
		FilmChange change = FilmChooser.choose(films, travel);
		long bestError = travel.nanometres();
		int fewest = 0;
		for (List<Length> choice : choices(films)) {
			long error = travel.minus(sum(choice)).abs().nanometres();
			if (error < bestError || error == bestError && choice.size() < fewest) {
				bestError = error;
				fewest = choice.size();
			}
		}
		assertEquals(bestError, change.remainder().abs().nanometres());
		assertEquals(fewest, change.pieces().size());
		assertTrue(films.stream().allMatch(film -> change.pieces().stream()
				.filter(film.thickness()::equals).count() <= film.pieces()));
	}

	@Test
	void takingAwayMirrorsAddingFromAnUnlimitedStock() {
		SplittableRandom random = new SplittableRandom(41);
		for (int i = 0; i < 500; i++) {
			List<FilmSupply> films = randomStock(random).stream()
					.map(film -> FilmSupply.unlimited(film.thickness())).toList();
			Length travel = new Length(random.nextLong(1, 600_000));
			FilmChange add = FilmChooser.choose(films, travel);
			FilmChange take = FilmChooser.choose(films, travel.negated());
			assertEquals(add.pieces(), take.pieces());
			assertEquals(add.moved().negated(), take.moved());
		}
	}

	@Test
	void takingAwayDoesNotAskForBlanksOnHand() {
		List<FilmSupply> usedUp = List.of(new FilmSupply(Length.thou("1"), 0));
		assertEquals(List.of(Length.thou("1")), FilmChooser.choose(usedUp, Length.thou("-1")).pieces());
		assertEquals(List.of(), FilmChooser.choose(usedUp, Length.thou("1")).pieces());
	}

	@Test
	void ofEquallyNearChoicesItTakesTheSmallerSumAndThenTheThickestPiece() {
		assertEquals(List.of(Length.thou("1")), added("2", "1", "3"));
		assertEquals(List.of(Length.thou("3"), Length.thou("1")), added("4", "1", "2", "3"));
	}

	private static List<Length> added(String travel, String... films) {
		List<FilmSupply> one = Stream.of(films).map(film -> new FilmSupply(Length.thou(film), film.equals("1") ? 1 : 2)).toList();
		return FilmChooser.choose(one, Length.thou(travel)).pieces();
	}

	private static List<FilmSupply> randomStock(SplittableRandom random) {
		List<FilmSupply> films = new ArrayList<>();
		for (int halfThou = 1; halfThou <= 15; halfThou++) {
			if (random.nextInt(3) == 0) {
				films.add(new FilmSupply(new Length(halfThou * 12_700L), random.nextInt(4)));
			}
		}
		return films;
	}

	private static List<List<Length>> choices(List<FilmSupply> films) {
		List<Length> blanks = new ArrayList<>();
		films.forEach(film -> {
			for (int i = 0; i < film.pieces(); i++) {
				blanks.add(film.thickness());
			}
		});
		List<List<Length>> choices = new ArrayList<>();
		for (int i = 0; i < blanks.size(); i++) {
			choices.add(List.of(blanks.get(i)));
			for (int j = i + 1; j < blanks.size(); j++) {
				choices.add(List.of(blanks.get(i), blanks.get(j)));
				for (int k = j + 1; k < blanks.size(); k++) {
					choices.add(List.of(blanks.get(i), blanks.get(j), blanks.get(k)));
				}
			}
		}
		return choices;
	}

	private static Length sum(List<Length> films) {
		return films.stream().reduce(Length.ZERO, Length::plus);
	}
}

package padwright.engine.coupling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

/**
 * Chooses at most three films whose sum is nearest to a travel: least error, then fewest pieces, then the smaller sum,
 * then the thickest piece; found by trying them all. To add, no more pieces are used than are on hand; to take away,
 * the thicknesses are those of the stock, but what lies in the bumper is not counted.
 */
final class FilmChooser {

	/** Three of the usual 0.5 to 7.5 thou reach 22.5 thou in half-thou steps; a bumper that needs more is worn out. */
	static final int MOST_PIECES = 3;

	private final List<FilmSupply> thickestFirst;
	private final long wanted;
	private final boolean adding;
	private List<Length> best = List.of();
	private long bestSum;

	private FilmChooser(List<FilmSupply> films, Length travel) {
		thickestFirst = films.stream().sorted(Comparator.comparing(FilmSupply::thickness).reversed()).toList();
		wanted = travel.abs().nanometres();
		adding = travel.signum() > 0;
	}

	static FilmChange choose(List<FilmSupply> films, Length travel) {
		FilmChooser chooser = new FilmChooser(films, travel);
		chooser.extend(new ArrayList<>(), 0, 0);
		return new FilmChange(travel, chooser.best);
	}

	private void extend(List<Length> pieces, int from, long sum) {
		if (isBetter(pieces.size(), sum)) {
			best = List.copyOf(pieces);
			bestSum = sum;
		}
		if (pieces.size() == MOST_PIECES) {
			return;
		}
		for (int i = from; i < thickestFirst.size(); i++) {
			Length film = thickestFirst.get(i).thickness();
			if (isOnHand(thickestFirst.get(i), pieces)) {
				pieces.add(film);
				extend(pieces, i, Math.addExact(sum, film.nanometres()));
				pieces.remove(pieces.size() - 1);
			}
		}
	}

	private boolean isOnHand(FilmSupply film, List<Length> pieces) {
		return !adding || pieces.stream().filter(film.thickness()::equals).count() < film.pieces();
	}

	/** The search meets equal sums of equally many pieces with the thickest piece first, so the first one stays. */
	private boolean isBetter(int pieces, long sum) {
		int byError = Long.compare(Math.abs(wanted - sum), Math.abs(wanted - bestSum));
		int byPieces = byError != 0 ? byError : Integer.compare(pieces, best.size());
		return byPieces != 0 ? byPieces < 0 : sum < bestSum;
	}
}

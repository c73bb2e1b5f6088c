package padwright.engine.height;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;

/** Tries every choice of pieces up to twice the target: the oracle for the solver's full ranking. */
final class ExhaustiveHeight {

	private static final Comparator<List<Long>> BY_THICKEST_PIECES = (a, b) -> {
		for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
			int order = Long.compare(a.get(i), b.get(i));
			if (order != 0) {
				return order;
			}
		}
		return Integer.compare(a.size(), b.size());
	};

	private final long target;
	private final List<FilmSupply> thickestFirst;
	private final Comparator<List<Long>> ranking;
	private List<Long> best = List.of();

	private ExhaustiveHeight(long target, List<FilmSupply> supply) {
		this.target = target;
		thickestFirst = supply.stream().sorted(Comparator.comparing(FilmSupply::thickness).reversed()).toList();
		ranking = Comparator.<List<Long>>comparingLong(pieces -> Math.abs(sum(pieces) - target))
				.thenComparingLong(ExhaustiveHeight::sum)
				.thenComparingInt(List::size)
				.thenComparingLong(pieces -> pieces.stream().mapToLong(piece -> piece * piece).sum())
				.thenComparing(BY_THICKEST_PIECES);
	}

	static List<Length> pieces(Length target, List<FilmSupply> supply) {
		ExhaustiveHeight search = new ExhaustiveHeight(target.nanometres(), supply);
		search.extend(0, new ArrayList<>(), 0);
		return search.best.stream().map(Length::new).toList();
	}

	private void extend(int film, List<Long> pieces, long sum) {
		if (film == thickestFirst.size()) {
			if (ranking.compare(pieces, best) < 0) {
				best = List.copyOf(pieces);
			}
			return;
		}
		long thickness = thickestFirst.get(film).thickness().nanometres();
		int before = pieces.size();
		for (int count = 0; count <= thickestFirst.get(film).pieces()
				&& sum + count * thickness <= 2 * Math.max(target, 0); count++) {
			extend(film + 1, pieces, sum + count * thickness);
			pieces.add(thickness);
		}
		pieces.subList(before, pieces.size()).clear();
	}

	private static long sum(List<Long> pieces) {
		return pieces.stream().mapToLong(Long::longValue).sum();
	}
}

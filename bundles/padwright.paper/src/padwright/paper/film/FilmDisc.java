package padwright.paper.film;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

import padwright.engine.film.RingNest;
import padwright.engine.length.Length;

/**
 * A disc of film with the pieces that are cut from its ring.
 *
 * @param diameter of the disc
 * @param cuts one or more, clockwise
 */
record FilmDisc(Length diameter, List<Cut> cuts) {

	/**
	 * A piece in its place on the disc, which is seldom its place in the cup: film is alike all around.
	 *
	 * @param startHalfHour half hours clockwise from the top of the disc
	 */
	record Cut(FilmPiece piece, int startHalfHour) {

		int endHalfHour() {
			return startHalfHour + piece.shim().arc().halfHours();
		}
	}

	/** The discs for pieces of one thickness, largest first. */
	static List<FilmDisc> of(List<FilmPiece> pieces) {
		SortedMap<Length, List<FilmPiece>> byDiameter = new TreeMap<>(Comparator.reverseOrder());
		pieces.forEach(piece -> byDiameter.computeIfAbsent(piece.diameter(), width -> new ArrayList<>()).add(piece));
		List<FilmDisc> discs = new ArrayList<>();
		byDiameter.forEach((diameter, alike) -> discs.addAll(nest(diameter, alike)));
		return discs;
	}

	private static List<FilmDisc> nest(Length diameter, List<FilmPiece> pieces) {
		SortedMap<Integer, List<Cut>> cuts = new TreeMap<>();
		for (RingNest.Place place : RingNest.of(pieces.stream().map(piece -> piece.shim().arc()).toList())) {
			cuts.computeIfAbsent(place.disc(), disc -> new ArrayList<>())
					.add(new Cut(pieces.get(place.piece()), place.startHalfHour()));
		}
		return cuts.values().stream().map(onOne -> new FilmDisc(diameter, List.copyOf(onOne))).toList();
	}

	RingSize ring() {
		return RingSize.ofPad(diameter);
	}

	/** Of all its pieces, mm². */
	double usedArea() {
		return cuts.stream().mapToDouble(cut -> ring().area(cut.piece().shim())).sum();
	}
}

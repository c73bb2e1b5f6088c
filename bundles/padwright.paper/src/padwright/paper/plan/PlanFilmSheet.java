package padwright.paper.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.model.stock.FilmSet;
import padwright.model.systems.EffectiveKey;
import padwright.paper.film.FilmGroup;
import padwright.paper.film.FilmPiece;
import padwright.paper.film.FilmSheet;
import padwright.paper.film.FullShims;
import padwright.paper.words.Messages;
import padwright.workup.cautions.Cautions;
import padwright.workup.parts.Article;
import padwright.workup.parts.Labels;
import padwright.workup.parts.RowWork;
import padwright.workup.solve.PlanSolution;
import padwright.workup.words.PieceWords;

/** The film cutting sheet of a solved plan: full shims and the pieces of the last round of each key. */
public final class PlanFilmSheet {

	private final List<String> leftOut = new ArrayList<>();
	/** What is cut from each film, thinnest first. */
	private final Map<FilmSet, SortedMap<Length, Cuts>> cuts = new LinkedHashMap<>();

	private PlanFilmSheet() {
	}

	/** Full shims by diameter, those of unknown diameter last, and pieces. */
	private record Cuts(SortedMap<Optional<Length>, Integer> full, List<FilmPiece> pieces) {

		private static final Comparator<Optional<Length>> KNOWN_FIRST =
				Comparator.comparing(diameter -> diameter.orElse(new Length(Long.MAX_VALUE)));

		Cuts() {
			this(new TreeMap<>(KNOWN_FIRST), new ArrayList<>());
		}

		List<FullShims> fullShims() {
			return full.entrySet().stream().map(entry -> new FullShims(entry.getKey(), entry.getValue())).toList();
		}
	}

	public static FilmSheet of(PlanSolution solution) {
		String title = Messages.of("film.title");
		PlanFilmSheet sheet = new PlanFilmSheet();
		RowWork.of(solution).forEach(sheet::add);
		String open = solution.keys().stream().filter(key -> !key.unsolved().isEmpty())
				.map(key -> Labels.ofKey(solution.plan(), key.job().name())).collect(Collectors.joining(", "));
		if (!open.isEmpty()) {
			sheet.leftOut.add(Messages.of("film.unsolved", open));
		}
		return new FilmSheet(PlanHead.of(title, solution.plan(), PlanHead.facts(solution.plan())),
				PlanHead.title(title, solution.plan()), sheet.groups(), !open.isEmpty(), sheet.leftOut,
				Cautions.ofFilm(solution.plan()));
	}

	private void add(RowWork row) {
		row.job().fitting().films().ifPresent(films -> {
			Optional<Length> diameter = row.padDiameter();
			row.stack().forEach(shim -> at(films, shim).full().merge(diameter, 1, Integer::sum));
			row.pieces().forEach(piece -> addPiece(row, films, diameter, piece));
		});
	}

	private void addPiece(RowWork row, FilmSet films, Optional<Length> diameter, PartialShim piece) {
		String key = row.job().key().map(EffectiveKey::label).orElse(row.job().name());
		if (diameter.isEmpty()) {
			leftOut.add(Messages.of("film.leftOut", key, PieceWords.of(piece)));
			return;
		}
		boolean assumed = Article.pad(row.job()).filter(Article::isListed).isEmpty();
		at(films, piece.thickness()).pieces().add(new FilmPiece(key, piece, diameter.get(), assumed));
	}

	private Cuts at(FilmSet films, Length thickness) {
		return cuts.computeIfAbsent(films, set -> new TreeMap<>()).computeIfAbsent(thickness, film -> new Cuts());
	}

	private List<FilmGroup> groups() {
		List<FilmGroup> groups = new ArrayList<>();
		cuts.forEach((films, byThickness) -> byThickness.forEach((thickness, cut) -> groups.add(new FilmGroup(
				Labels.of(films), thickness, Article.film(films, thickness).onHand(), cut.fullShims(), cut.pieces()))));
		return groups;
	}
}

package padwright.paper.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageFact;

/** Film cutting sheets; all invented. */
public final class DemoFilmSheet {

	private static final List<String> DIAMETERS = List.of("6.5", "9.6", "16.5", "17.5", "24.5");

	private DemoFilmSheet() {
	}

	static FilmGroup group(List<FullShims> full, List<FilmPiece> pieces) {
		return new FilmGroup("polyester film", Length.thou("0.5"), Optional.of(80), full, pieces);
	}

	/** Any pieces. */
	public static FilmSheet random(SplittableRandom random) {
		List<FilmGroup> groups = new ArrayList<>();
		for (int group = random.nextInt(1, 6); group > 0; group--) {
			List<FilmPiece> pieces = new ArrayList<>();
			for (int piece = random.nextInt(30); piece > 0; piece--) {
				Arc arc = new Arc(new ClockHour(random.nextInt(24)), random.nextInt(1, 24));
				pieces.add(new FilmPiece("low C♯", new PartialShim(arc, Length.thou("0.5")),
						Length.millimetres(DIAMETERS.get(random.nextInt(DIAMETERS.size()))), random.nextBoolean()));
			}
			groups.add(group(List.of(new FullShims(Optional.empty(), 2)), pieces));
		}
		return of(groups);
	}

	static FilmSheet of(List<FilmGroup> groups) {
		return of(groups, false);
	}

	/** @param isOpen whether keys are not solved yet */
	static FilmSheet of(List<FilmGroup> groups, boolean isOpen) {
		HeadText head = new HeadText("Boehm flute", "serial 1", "Film cutting sheet",
				List.of(new PageFact("Stock", "Bench")));
		return new FilmSheet(head, "Film cutting sheet", groups, isOpen, List.of("G: not on hand."),
				List.of("film: H315 Causes skin irritation."));
	}
}

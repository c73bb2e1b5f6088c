package padwright.workup.checks.plans;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.model.LengthText;
import padwright.model.plan.Piece;
import padwright.model.plan.Round;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmInCup;
import padwright.workup.solve.PlacedPieces;
import padwright.workup.words.Phrase;

/** Only a piece that lies behind the pad is taken out. */
public final class TakenOutCheck extends Check<KeyJob> {

	public TakenOutCheck() {
		super(KeyJob.class);
	}

	@Override
	protected void check(KeyJob job, Findings findings) {
		FilmInCup film = FilmInCup.NONE;
		for (Round round : job.service().getRounds()) {
			check(job, round, new ArrayList<>(film.pieces()), findings);
			film = film.after(round);
		}
	}

	private static void check(KeyJob job, Round round, List<PartialShim> inPlace, Findings findings) {
		for (Piece out : round.getRemoved()) {
			Optional<PartialShim> piece = PlacedPieces.of(out);
			if (piece.isPresent() && !inPlace.remove(piece.get())) {
				Optional<String> nearest = nearest(piece.get(), inPlace).map(other -> words(other, round));
				findings.error(IssueCodes.OUT_NOT_IN_PLACE, Place.of(out),
						new Advice(Phrase.of("out-not-in-place.what", words(piece.get(), round), job.name()),
								Phrase.of("out-not-in-place.why"),
								nearest.map(other -> Phrase.of("out-not-in-place.cure", other))
										.orElseGet(() -> Phrase.of("out-not-in-place.none"))),
						nearest.stream().toArray(String[]::new));
			}
		}
	}

	private static String words(PartialShim piece, Round round) {
		return LengthText.measure(piece.thickness(), round) + " " + piece.arc();
	}

	/** The piece in place that begins and ends nearest, of the nearest thickness. */
	private static Optional<PartialShim> nearest(PartialShim wanted, List<PartialShim> inPlace) {
		return inPlace.stream().min(Comparator.comparingInt((PartialShim piece) -> apart(wanted, piece))
				.thenComparing(piece -> piece.thickness().minus(wanted.thickness()).abs()));
	}

	private static int apart(PartialShim one, PartialShim other) {
		return between(one.arc().from().halfHoursTo(other.arc().from()))
				+ between(one.arc().to().halfHoursTo(other.arc().to()));
	}

	private static int between(int clockwise) {
		return Math.min(clockwise, ClockHour.STATIONS - clockwise);
	}
}

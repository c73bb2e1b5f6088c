package padwright.workup.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.engine.evidence.FeltRound;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Phrase;

/** The rounds of a row as evidence: what was felt, each with the film that was in place then. */
public final class FeltRounds {

	private FeltRounds() {
	}

	/** All rounds before the key was delivered; nothing where one cannot be used. */
	static Optional<List<FeltRound>> of(KeyJob job, Consumer<Phrase> why) {
		return of(job, job.service().getRounds(), why);
	}

	/** All rounds up to one of them, and that one. */
	public static Optional<List<FeltRound>> upTo(KeyJob job, Round last) {
		List<Round> rounds = job.allRounds();
		return of(job, rounds.subList(0, rounds.indexOf(last) + 1), unsaid -> {
		});
	}

	private static Optional<List<FeltRound>> of(KeyJob job, List<Round> rounds, Consumer<Phrase> why) {
		List<FeltRound> felt = new ArrayList<>();
		for (Round round : rounds) {
			RoundReadings.felt(job, round, why)
					.ifPresent(readings -> felt.add(new FeltRound(readings, FilmInCup.at(job, round).inPlace())));
		}
		return felt.size() == rounds.size() && !felt.isEmpty() ? Optional.of(List.copyOf(felt)) : Optional.empty();
	}
}

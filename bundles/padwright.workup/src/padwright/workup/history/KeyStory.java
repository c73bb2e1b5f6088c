package padwright.workup.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.length.Length;
import padwright.model.plan.PadState;
import padwright.model.plan.Round;
import padwright.workup.forecast.PastService;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmInCup;
import padwright.workup.solve.PadEvidence;

/** One key as its services are told, oldest first: a chapter for each pad that was in it. Changes; for one thread. */
final class KeyStory {

	/** Half a thou is enough to be felt in the response (common practice, no source). */
	private static final Length FINEST = Length.thou("0.5");

	private final List<KeyHistory> earlier = new ArrayList<>();
	private Optional<Chapter> pad = Optional.empty();

	/** What is told of one pad. */
	private static final class Chapter {

		private final String label;
		private final LocalDate fitted;
		private int services;
		private Optional<LocalDate> torn = Optional.empty();
		private final List<Movement> moved = new ArrayList<>();
		private final List<PadGaps> found = new ArrayList<>();
		private Optional<PadGaps> left = Optional.empty();

		private Chapter(String label, LocalDate fitted) {
			this.label = label;
			this.fitted = fitted;
		}

		private KeyHistory told() {
			return new KeyHistory(label, services, Optional.of(fitted), torn, moved, Trend.of(found));
		}
	}

	void add(LocalDate date, KeyJob job) {
		boolean isFirst = pad.isEmpty();
		if (PastService.isFound(job, PadState.TORN)) {
			pad.ifPresent(chapter -> chapter.torn = Optional.of(date));
		}
		if (isFirst || PastService.isNewPad(job)) {
			pad.map(Chapter::told).ifPresent(earlier::add);
			pad = Optional.of(new Chapter(job.key().orElseThrow().label(), date));
			if (isFirst && PastService.isFound(job, PadState.TORN)) {
				earlier.add(KeyHistory.tornBefore(job.key().orElseThrow().label(), date));
			}
		} else {
			job.allRounds().stream().findFirst().flatMap(felt -> gaps(date, job, felt, false))
					.ifPresent(felt -> find(felt, job));
		}
		tell(date, job);
	}

	private void tell(LocalDate date, KeyJob job) {
		Chapter chapter = pad.orElseThrow();
		chapter.services++;
		List<Round> rounds = job.allRounds();
		if (!rounds.isEmpty()) {
			chapter.left = gaps(date, job, rounds.get(rounds.size() - 1), true);
		}
	}

	/** @param after whether with what was done after the round */
	private static Optional<PadGaps> gaps(LocalDate date, KeyJob job, Round round, boolean after) {
		FilmInCup felt = FilmInCup.at(job, round);
		return PadEvidence.upTo(job, round).map(evidence -> new PadGaps(date,
				evidence.gaps((after ? felt.after(round) : felt).inPlace())));
	}

	private void find(PadGaps felt, KeyJob job) {
		Chapter chapter = pad.orElseThrow();
		chapter.found.add(felt);
		Length finest = job.plan().feelers().stream().findFirst().orElse(FINEST);
		chapter.left.ifPresent(left -> chapter.moved.add(Movement.between(left, felt, finest)));
	}

	/** Its pads, the oldest first. */
	List<KeyHistory> told() {
		return Stream.concat(earlier.stream(), pad.map(Chapter::told).stream()).toList();
	}
}

package padwright.workup.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.rim.RimProfile;
import padwright.model.plan.PadState;
import padwright.model.plan.Round;
import padwright.workup.forecast.PastService;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.RoundEffect;

/** One key as its services are told, oldest first. Changes; for one thread. */
final class KeyStory {

	/** Half a thou is enough to be felt in the response (common practice, no source). */
	private static final Length FINEST = Length.thou("0.5");

	private record Left(LocalDate date, RimProfile profile) {
	}

	private String label;
	private int services;
	private final List<LocalDate> fitted = new ArrayList<>();
	private final List<LocalDate> torn = new ArrayList<>();
	private final List<Movement> moved = new ArrayList<>();
	private final List<Trend.Found> found = new ArrayList<>();
	private Optional<Left> left = Optional.empty();

	void add(LocalDate date, KeyJob job) {
		label = job.key().orElseThrow().label();
		services++;
		if (PastService.isFound(job, PadState.TORN)) {
			torn.add(date);
		}
		List<Round> rounds = job.allRounds();
		if (services == 1 || PastService.isNewPad(job)) {
			fitted.add(date);
			left = Optional.empty();
		} else if (!rounds.isEmpty()) {
			RoundEffect.of(job, rounds.get(0)).ifPresent(felt -> find(date, felt, job));
		}
		if (!rounds.isEmpty()) {
			left = RoundEffect.of(job, rounds.get(rounds.size() - 1))
					.map(last -> new Left(date, last.predicted().orElse(last.rim().profile())));
		}
	}

	private void find(LocalDate date, RoundEffect felt, KeyJob job) {
		found.add(new Trend.Found(date, felt.before()));
		Length finest = job.plan().feelers().stream().findFirst().orElse(FINEST);
		left.ifPresent(before -> moved
				.add(Movement.between(before.date(), before.profile(), date, felt.rim().profile(), finest)));
	}

	KeyHistory told() {
		return new KeyHistory(label, services, fitted, torn, moved, Trend.of(found));
	}
}

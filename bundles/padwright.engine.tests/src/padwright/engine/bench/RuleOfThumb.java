package padwright.engine.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.FeltReading;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;

/**
 * What a bench without figures does (common practice, no source): film as thick as the slackest reading under the longest
 * run of hours that slide, to halfway to the hours that drag.
 */
final class RuleOfThumb {

	private static final int LONGEST = 22;

	private final List<FeltReading> felt;
	private final int apart;

	RuleOfThumb(List<FeltReading> felt) {
		this.felt = felt;
		apart = ClockHour.STATIONS / felt.size();
	}

	/** Nothing where no hour drags, since then the key is held off. */
	Optional<PartialShim> piece() {
		if (felt.stream().noneMatch(FeltReading::drags)) {
			return Optional.empty();
		}
		int first = IntStream.range(0, felt.size()).boxed().max((one, other) -> run(one) - run(other)).orElseThrow();
		int halfHours = Math.min(LONGEST, run(first) * apart);
		ClockHour from = felt.get(first).hour().plusHalfHours(-(apart / 2));
		return Optional.of(new PartialShim(new Arc(from, halfHours), slackest()));
	}

	private int run(int from) {
		int run = 0;
		while (run < felt.size() && !felt.get((from + run) % felt.size()).drags()) {
			run++;
		}
		return run;
	}

	private Length slackest() {
		return felt.stream().filter(reading -> !reading.drags()).map(FeltReading::above).max(Length::compareTo)
				.orElseThrow();
	}
}

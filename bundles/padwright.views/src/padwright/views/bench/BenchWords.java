package padwright.views.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.engine.seating.SeatAnswer;
import padwright.views.Messages;
import padwright.views.bench.Told.Tone;
import padwright.views.clock.ClockProposal;
import padwright.views.clock.ClockSession;
import padwright.views.rows.NotedWork;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;
import padwright.workup.solve.PadGap;
import padwright.workup.words.Chance;
import padwright.workup.words.GapWords;

/** What bench mode says of a key. */
final class BenchWords {

	private BenchWords() {
	}

	/** The key and the hour that is read next. */
	static String where(BenchSession session) {
		ClockSession clock = session.clock();
		List<ClockHour> hours = clock.state().hours();
		return clock.typing().isAllRead() ? clock.state().label()
				: Messages.of("bench.where", clock.state().label(), hours.get(clock.typing().entry().cursor()));
	}

	/** Of the first reading that changed. */
	static Tone tone(List<LeafReading> before, List<LeafReading> after) {
		int index = 0;
		while (index < Math.min(before.size(), after.size() - 1) && before.get(index).equals(after.get(index))) {
			index++;
		}
		return after.get(index).slides().isPresent() ? Tone.SLIDES : Tone.DRAGS;
	}

	/** What is to be done now, in a few words. */
	static String toDo(BenchSession session) {
		ClockSession clock = session.clock();
		if (clock.state().job().isEmpty() || clock.typing().isLeaving()) {
			return Messages.of("bench.waiting");
		}
		if (!session.isRead()) {
			return feel(clock);
		}
		if (session.isAnswered()) {
			return Messages.of("bench.done", noted(clock));
		}
		return clock.proposal().flatMap(ClockProposal::toDo).orElseGet(() -> session.isSolving()
				? Messages.of("bench.solving") : Messages.of(session.isHeldOff() ? "bench.heldOff" : "bench.noAnswer"));
	}

	private static String feel(ClockSession clock) {
		List<ClockHour> hours = clock.state().hours();
		return hours.isEmpty() ? Messages.of("bench.noHours") : Messages.of("bench.feel",
				hours.get(clock.typing().entry().cursor()), hours.size() - clock.readings().size());
	}

	private static String noted(ClockSession clock) {
		return clock.state().job().flatMap(KeyJob::lastRound).map(NotedWork::of).orElse("");
	}

	/** How likely the pad is level, as far as it is known. */
	static List<String> chances(BenchSession session) {
		ClockSession clock = session.clock();
		List<String> lines = new ArrayList<>();
		if (!session.isRead() || clock.typing().isLeaving()) {
			return lines;
		}
		Optional<PadGap> felt = clock.state().felt().filter(gap -> clock.readings().equals(clock.state().readings()));
		felt.ifPresent(gap -> lines.add(Messages.of("bench.now", Chance.of(gap.chance()), range(gap))));
		Optional<SeatAnswer> proposed = clock.proposal().flatMap(ClockProposal::answer).filter(seat -> !seat.nothing());
		proposed.ifPresent(seat -> lines.add(Messages.of("bench.then", Chance.of(seat.chance()),
				GapWords.range(seat.gapAfter(), PadGap.widest(seat.gapAfter())))));
		if (proposed.isEmpty()) {
			clock.state().left(clock.pieces())
					.ifPresent(gap -> lines.add(Messages.of("bench.then", Chance.of(gap.chance()), range(gap))));
		}
		return lines;
	}

	private static String range(PadGap gap) {
		return GapWords.range(gap.band(), gap.widest());
	}

	/** What is told besides: what was just typed, or what makes the answer doubtful. */
	static String note(BenchSession session) {
		ClockSession clock = session.clock();
		Optional<String> doubt = clock.state().doubtful().stream().sorted().findFirst()
				.map(hour -> Messages.of("clock.doubtful", hour));
		return !session.noAnswer().isEmpty() ? session.noAnswer()
				: session.isRead() && doubt.isPresent() ? doubt.get() : clock.proposal().isPresent() ? "" : clock.status();
	}
}

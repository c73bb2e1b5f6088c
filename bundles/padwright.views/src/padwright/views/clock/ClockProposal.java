package padwright.views.clock;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.engine.evidence.GapBand;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.engine.seating.SeatAnswer;
import padwright.views.Messages;
import padwright.views.WorkWords;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.SeatWords;
import padwright.workup.solve.WrittenAnswers;
import padwright.workup.words.Chance;
import padwright.workup.words.Phrase;
import padwright.workup.words.PieceWords;

/**
 * What would bring a pad to its seat.
 *
 * @param key the row it is for
 * @param answer what to do and how sure it is; nothing where the pad could not be solved
 * @param words how sure it is, or why there is no answer; in lines
 */
public record ClockProposal(KeyJob key, Optional<SeatAnswer> answer, List<String> words) {

	public ClockProposal {
		words = List.copyOf(words);
	}

	/** Whether there is anything to apply: not where the key is held off. */
	public boolean isSolved() {
		return answer.filter(seat -> !seat.heldOff()).isPresent();
	}

	/** Pieces to place. */
	public List<PartialShim> pieces() {
		return answer.map(SeatAnswer::place).orElse(List.of());
	}

	/** Earlier pieces to take out. */
	public List<PartialShim> takeOut() {
		return answer.map(SeatAnswer::takeOut).orElse(List.of());
	}

	/** By how much the full shims are to be changed. */
	public Length fullShims() {
		return answer.map(SeatAnswer::fullShims).orElse(Length.ZERO);
	}

	/** What to do, in the unit that is shown; nothing where it is not known. */
	public Optional<String> toDo() {
		return answer.filter(seat -> !seat.heldOff())
				.map(seat -> seat.nothing() ? Messages.of("clock.nothing") : toDo(seat));
	}

	private static String toDo(SeatAnswer seat) {
		Stream<String> full = Stream.of(seat.fullShims()).filter(change -> change.signum() != 0).map(WorkWords::full);
		return Stream.of(full, seat.takeOut().stream().map(WorkWords::out), seat.place().stream().map(PieceWords::of))
				.flatMap(words -> words).collect(Collectors.joining(", "));
	}

	/** What to do and how sure it is, in one line. */
	String inLine() {
		String all = String.join("; ", words);
		return toDo().map(work -> Messages.of("clock.proposal", work, Chance.of(answer.orElseThrow().chanceNow()),
				Chance.of(answer.orElseThrow().chance()), all)).orElse(all);
	}

	/** Where the gap is predicted to lie then. */
	public Optional<GapBand> left() {
		return answer.map(SeatAnswer::gapAfter);
	}

	/**
	 * Solves a row with the film that the rows before it leave. Takes its time: not for the window's thread.
	 *
	 * @param next told of each row before it is solved; may throw to give up
	 */
	public static ClockProposal solve(KeyJob job, Consumer<KeyJob> next) {
		return PlanSolver.solve(job.plan(), WrittenAnswers.KEEP, next).keys().stream()
				.filter(solved -> solved.job().service() == job.service()).findFirst().map(ClockProposal::of)
				.orElseThrow(() -> new IllegalArgumentException("key " + job.name() + " is not in its plan"));
	}

	private static ClockProposal of(KeySolution solved) {
		return solved.level().map(answer -> of(solved.job(), answer))
				.orElseGet(() -> new ClockProposal(solved.job(), Optional.empty(), solved.unsolved().stream().map(Phrase::words).toList()));
	}

	private static ClockProposal of(KeyJob job, LevelAnswer answer) {
		return new ClockProposal(job, Optional.of(answer.seat()), Stream
				.concat(SeatWords.warnings(job, answer).stream(), SeatWords.hints(job, answer).stream()).toList());
	}
}

package padwright.views.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

import padwright.engine.film.PartialShim;
import padwright.language.edit.ReadingEdits;
import padwright.language.edit.ShimEdits;
import padwright.language.edit.TextEdit;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.FullShims;
import padwright.workup.solve.LeafReading;
import padwright.workup.solve.PlacedPieces;

/**
 * What the user wants a row to say, and the way to its text. A change is handed over at once; changes made before the
 * text was read again, or while it cannot be written, wait for it, so that nothing typed fast is lost and no edit is made
 * for an older text.
 */
final class ClockEditing {

	private final Predicate<List<TextEdit>> onEdit;
	private ClockState shown = ClockState.empty();
	private List<LeafReading> readings = List.of();
	private List<PartialShim> pieces = List.of();
	private boolean another;
	private boolean changed;
	private boolean waiting;
	private String fault = "";

	/** @param onEdit false where the text is another meanwhile: the change is handed over again once it is read */
	ClockEditing(Predicate<List<TextEdit>> onEdit) {
		this.onEdit = onEdit;
	}

	/**
	 * The row as its text says now. Changes made meanwhile are handed over, unless it is another row. What was read
	 * before the last change was written is no news.
	 */
	void show(ClockState state) {
		boolean same = name(state).equals(name(shown));
		if (same && waiting && plan(state) == plan(shown)) {
			return;
		}
		shown = state;
		waiting = false;
		if (same && changed) {
			handOver();
			return;
		}
		changed = false;
		another = another && same && readings.isEmpty();
		readings = another ? List.of() : state.readings();
		pieces = another ? List.of() : state.pieces();
	}

	private static Optional<String> name(ClockState state) {
		return state.job().map(job -> job.plan().plan().getName() + "/" + job.name());
	}

	/** Each reading of the text makes a plan of its own. */
	private static ServicePlan plan(ClockState state) {
		return state.job().map(KeyJob::plan).orElse(null);
	}

	ClockState shown() {
		return shown;
	}

	List<LeafReading> readings() {
		return readings;
	}

	List<PartialShim> pieces() {
		return pieces;
	}

	/** Pieces from before the readings that are shown. */
	List<PartialShim> earlier() {
		List<PartialShim> earlier = new ArrayList<>(shown.earlier());
		if (another) {
			earlier.addAll(shown.pieces());
		}
		return earlier;
	}

	boolean isAnotherRound() {
		return another;
	}

	/** The next readings begin another round. */
	void beginAnotherRound() {
		another = shown.job().isPresent() && !shown.readings().isEmpty();
		if (another) {
			readings = List.of();
			pieces = List.of();
		}
	}

	/** Sets the readings from an hour on, by its place among the hours; at most one after those that are read. */
	void read(int index, List<LeafReading> more) {
		List<LeafReading> next = new ArrayList<>(readings.subList(0, index));
		next.addAll(more);
		if (next.size() < readings.size()) {
			next.addAll(readings.subList(next.size(), readings.size()));
		}
		readings = List.copyOf(next);
		change();
	}

	/** Shows pieces without writing them yet, as while one is dragged. */
	void preview(List<PartialShim> next) {
		pieces = next;
	}

	void place(List<PartialShim> next) {
		pieces = next;
		change();
	}

	private void change() {
		changed = true;
		fault = "";
		if (!waiting) {
			handOver();
		}
	}

	private void handOver() {
		changed = false;
		try {
			List<TextEdit> edits = shown.job().map(job -> edits(job.service())).orElse(List.of());
			if (!edits.isEmpty()) {
				waiting = true;
				changed = !onEdit.test(edits);
				another = another && changed;
			}
		} catch (IllegalArgumentException unsayable) {
			fault = unsayable.getMessage();
			readings = shown.readings();
			pieces = shown.pieces();
		}
	}

	/** Why the last change could not be said in the row's text; nothing where it could. */
	Optional<String> fault() {
		return Optional.of(fault).filter(words -> !words.isEmpty());
	}

	/** Whether all that was changed stands in the text, which was read since. */
	boolean isSettled() {
		return !waiting && !changed;
	}

	private List<TextEdit> edits(KeyService row) {
		if (readings.isEmpty()) {
			return List.of();
		}
		if (another) {
			return ReadingEdits.another(row, readings);
		}
		List<TextEdit> edits = new ArrayList<>();
		if (!readings.equals(shown.readings())) {
			edits.addAll(ReadingEdits.latest(row, readings));
		}
		if (!pieces.equals(shown.pieces()) && !row.getRounds().isEmpty()) {
			edits.addAll(ShimEdits.pieces(row.getRounds().get(row.getRounds().size() - 1), pieces));
		}
		return edits;
	}

	/** Writes a proposal for the readings as they stand in the text; while a change waits for its text there is none. */
	void apply(ClockProposal answer) {
		note(round -> ShimEdits.done(round, answer.fullShims(), answer.takeOut(), answer.pieces()));
	}

	/** Notes that the last piece of the earlier rounds is out; false where there is none, or a change waits. */
	boolean takeOutLast() {
		List<PartialShim> earlier = shown.earlier();
		return !earlier.isEmpty() && note(round -> {
			List<PartialShim> out = new ArrayList<>(PlacedPieces.takenOut(round));
			out.add(earlier.get(earlier.size() - 1));
			return ShimEdits.done(round, FullShims.change(round), out, PlacedPieces.of(round));
		});
	}

	private boolean note(Function<Round, List<TextEdit>> done) {
		List<TextEdit> edits = waiting || another ? List.of()
				: shown.job().flatMap(KeyJob::lastRound).map(done).orElse(List.of());
		boolean written = !edits.isEmpty() && onEdit.test(edits);
		waiting |= written;
		return written;
	}
}

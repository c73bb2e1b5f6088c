package padwright.views.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.engine.film.PartialShim;
import padwright.language.edit.ReadingEdits;
import padwright.language.edit.ShimEdits;
import padwright.language.edit.TextEdit;
import padwright.model.plan.KeyService;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.LeafReading;

/**
 * What the user wants a row to say, and the way to its text. A change is handed over at once; changes made before the
 * text was read again wait for it, so that nothing typed fast is lost and no edit is made for an older text.
 */
final class ClockEditing {

	private final Consumer<List<TextEdit>> onEdit;
	private ClockState shown = ClockState.empty();
	private List<LeafReading> readings = List.of();
	private List<PartialShim> pieces = List.of();
	private boolean another;
	private boolean changed;
	private boolean waiting;

	ClockEditing(Consumer<List<TextEdit>> onEdit) {
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

	/** Sets the reading of an hour, by its place among the hours; at most one more than are read. */
	void read(int index, LeafReading reading) {
		List<LeafReading> next = new ArrayList<>(readings);
		if (index < next.size()) {
			next.set(index, reading);
		} else {
			next.add(reading);
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
		if (!waiting) {
			handOver();
		}
	}

	private void handOver() {
		changed = false;
		List<TextEdit> edits = shown.job().map(job -> edits(job.service())).orElse(List.of());
		if (!edits.isEmpty()) {
			waiting = true;
			onEdit.accept(edits);
		}
	}

	private List<TextEdit> edits(KeyService row) {
		if (readings.isEmpty()) {
			return List.of();
		}
		if (another) {
			another = false;
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
		if (waiting) {
			return;
		}
		pieces = answer.pieces();
		List<TextEdit> edits = shown.job().flatMap(KeyJob::lastRound).map(
				round -> ShimEdits.done(round, answer.fullShims(), answer.takeOut(), answer.pieces())).orElse(List.of());
		if (!edits.isEmpty()) {
			waiting = true;
			onEdit.accept(edits);
		}
	}
}

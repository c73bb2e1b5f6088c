package padwright.views.clock;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import padwright.drawing.scene.Scene;
import padwright.engine.film.PartialShim;
import padwright.language.edit.TextEdit;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.workup.solve.LeafReading;
import padwright.workup.solve.PadGap;

/**
 * The use of a rim clock, without a window: readings typed in turn, pieces chosen, moved, added and dropped, a proposal
 * shown and applied. Every change is handed over as one list of edits of the plan's text.
 */
public final class ClockSession {

	private final ClockEditing editing;
	private final ReadingTyping typing;
	private Optional<Integer> selected = Optional.empty();
	private Optional<ClockProposal> proposal = Optional.empty();

	/**
	 * @param onEdit told of each change; the text as it is then is to be given to {@link #show}. False where it could not be
	 *     written because the text is another meanwhile: it is told again with the next state
	 */
	public ClockSession(Predicate<List<TextEdit>> onEdit) {
		editing = new ClockEditing(onEdit);
		typing = new ReadingTyping(editing, () -> {
			selected = Optional.empty();
			proposal = Optional.empty();
		});
	}

	/** Shows a row as its text says now. Typing goes on where it was if it is the row that was shown. */
	public void show(ClockState state) {
		boolean same = state.job().isPresent() && state.label().equals(editing.shown().label());
		editing.show(state);
		if (!same) {
			selected = Optional.empty();
			typing.start();
		}
		selected = selected.filter(index -> index < editing.pieces().size());
		proposal = proposal.filter(shown -> same && !editing.isAnotherRound()
				&& state.readings().equals(editing.readings()) && shown.key().name().equals(name(state)));
		typing.shown();
	}

	/** The strokes of readings and where they go. */
	public ReadingTyping typing() {
		return typing;
	}

	/** A stroke of a reading; false if it cannot belong to one. While a piece is chosen a dash is none. */
	public boolean type(char stroke) {
		return (stroke != ReadingEntry.LIGHT_DRAG || selected.isEmpty()) && typing.type(stroke);
	}

	/** What the leaves said, hour by hour, with what waits to be written. */
	public List<LeafReading> readings() {
		return editing.readings();
	}

	/** Whether all that was changed stands in the text. */
	public boolean isSettled() {
		return editing.isSettled();
	}

	private static String name(ClockState state) {
		return state.job().map(job -> job.name()).orElse("");
	}

	/** The drawing of the moment, for a window of this shape. */
	public Scene draw(Palette palette, double aspect) {
		return ClockScene.draw(new ClockPicture(editing.shown(), editing.readings(), editing.earlier(),
				editing.pieces(), selected, typing.entry(), proposal), palette, aspect);
	}

	/** What to tell the user now, in one line; may be empty. */
	public String status() {
		return typing.status();
	}

	/** The row that is shown. */
	public ClockState state() {
		return editing.shown();
	}

	public List<PartialShim> pieces() {
		return editing.pieces();
	}

	/** How many pieces of earlier rounds are drawn before those of this one. */
	public int earlierCount() {
		return editing.earlier().size();
	}

	public Optional<ClockProposal> proposal() {
		return proposal;
	}

	public Optional<Integer> selected() {
		return selected;
	}

	/** The next readings begin another round; those typed before stay in the text. */
	public void anotherRound() {
		editing.beginAnotherRound();
		typing.start();
		selected = Optional.empty();
		proposal = Optional.empty();
	}

	/** Chooses a piece by its place among the pieces, or none. */
	public void select(Optional<Integer> index) {
		selected = index.filter(piece -> proposal.isEmpty() && piece >= 0 && piece < editing.pieces().size());
	}

	/** Moves the start (or the end) of the chosen piece by half hours, clockwise for more than 0. */
	public void shift(boolean end, int halfHours) {
		selected.ifPresent(index -> editing.place(
				Arcs.shifted(editing.pieces(), index, end ? Arcs.End.TO : Arcs.End.FROM, halfHours)));
	}

	/** Makes the chosen piece of the next thicker film, or of the next thinner one for −1. */
	public void thicken(int step) {
		selected.ifPresent(
				index -> editing.place(Arcs.thicker(editing.pieces(), index, step, editing.shown().films())));
	}

	/** Shows the start (or end) of a piece at the hour under a point of the drawing, without writing it. */
	public void drag(int index, boolean end, double x, double y) {
		if (index < editing.pieces().size()) {
			editing.preview(Arcs.moved(editing.pieces(), index, end ? Arcs.End.TO : Arcs.End.FROM,
					ClockScene.hourAt(x, y)));
		}
	}

	/** Writes what was dragged. */
	public void drop() {
		editing.place(editing.pieces());
	}

	/** Takes the chosen piece away. */
	public void remove() {
		selected.ifPresent(index -> {
			selected = Optional.empty();
			editing.place(Arcs.without(editing.pieces(), index));
		});
	}

	/** Notes that the last piece of the earlier rounds is taken out; false where there is none, or a change is under way. */
	public boolean takeOutLast() {
		proposal = Optional.empty();
		return editing.takeOutLast();
	}

	/** Adds a piece of the thinnest film where the gap is widest, and chooses it. */
	public void add() {
		if (editing.shown().job().isEmpty() || editing.readings().isEmpty() || editing.shown().films().isEmpty()) {
			typing.tell(Messages.of("clock.noPiece"));
			return;
		}
		proposal = Optional.empty();
		List<PartialShim> more = Arcs.withAnother(editing.pieces(), editing.shown().films(),
				editing.shown().left(editing.pieces()).or(() -> editing.shown().felt()).map(PadGap::widest));
		selected = Optional.of(more.size() - 1);
		editing.place(more);
	}

	/** Shows a proposal; nothing takes it away again. */
	public void propose(Optional<ClockProposal> next) {
		proposal = next.filter(shown -> shown.key().name().equals(name(editing.shown())));
		selected = Optional.empty();
		typing.tell(proposal.map(ClockProposal::inLine).orElse(""));
		proposal = proposal.filter(ClockProposal::isSolved);
	}

	/** Writes the proposal. */
	public void apply() {
		proposal.ifPresent(answer -> {
			proposal = Optional.empty();
			typing.tell("");
			editing.apply(answer);
		});
	}
}

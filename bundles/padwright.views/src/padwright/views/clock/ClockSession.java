package padwright.views.clock;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import padwright.drawing.scene.Scene;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.seating.SeatAnswer;
import padwright.language.edit.TextEdit;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.workup.solve.LeafReading;
import padwright.workup.solve.PadGap;
import padwright.workup.solve.SeatWords;
import padwright.workup.words.Chance;

/**
 * The use of a rim clock, without a window: readings typed in turn, pieces chosen, moved, added and dropped, a proposal
 * shown and applied. Every change is handed over as one list of edits of the plan's text.
 */
public final class ClockSession {

	private final ClockEditing editing;
	private ReadingEntry entry = new ReadingEntry(0, "");
	private Optional<Integer> selected = Optional.empty();
	private Optional<ClockProposal> proposal = Optional.empty();
	private String status = "";

	/** @param onEdit told of each change; the text as it is then is to be given to {@link #show} */
	public ClockSession(Consumer<List<TextEdit>> onEdit) {
		editing = new ClockEditing(onEdit);
	}

	/** Shows a row as its text says now. Typing goes on where it was if it is the row that was shown. */
	public void show(ClockState state) {
		boolean same = state.job().isPresent() && state.label().equals(editing.shown().label());
		editing.show(state);
		if (!same) {
			selected = Optional.empty();
			status = "";
			entry = ReadingEntry.start(editing.readings().size(), state.hours().size());
		}
		entry = new ReadingEntry(Math.min(entry.cursor(), Math.max(0, state.hours().size() - 1)), entry.typed(),
				entry.refused());
		selected = selected.filter(index -> index < editing.pieces().size());
		proposal = proposal.filter(shown -> same && !editing.isAnotherRound()
				&& state.readings().equals(editing.readings()) && shown.key().name().equals(name(state)));
	}

	private static String name(ClockState state) {
		return state.job().map(job -> job.name()).orElse("");
	}

	/** The drawing of the moment, for a window of this shape. */
	public Scene draw(Palette palette, double aspect) {
		return ClockScene.draw(new ClockPicture(editing.shown(), editing.readings(), editing.earlier(),
				editing.pieces(), selected, entry, proposal), palette, aspect);
	}

	/** What to tell the user now, in one line; may be empty. */
	public String status() {
		return status;
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

	/** A character of a reading; false if it cannot belong to one. */
	public boolean type(char character) {
		boolean isReading = character != ReadingEntry.LIGHT_DRAG || selected.isEmpty() && editing.shown().isGraded();
		if (!ReadingEntry.takes(character) || !isReading || editing.shown().hours().isEmpty()) {
			return false;
		}
		selected = Optional.empty();
		if (entry.isFull()) {
			status = Messages.of("clock.noMore", entry.typed());
		} else {
			entry = entry.with(character);
		}
		return true;
	}

	/**
	 * Takes what is typed as the reading of the hour and goes to the next; false where nothing is typed. What cannot be a
	 * reading stays typed, and is told why.
	 */
	public boolean enter() {
		if (entry.typed().isEmpty()) {
			return false;
		}
		Optional<TypedReading> typed = TypedReading.of(entry.typed(), editing.shown().leaves());
		if (typed.isEmpty()) {
			status = Messages.of("clock.noReading", entry.typed(), Figures.unit());
			entry = entry.refuse();
			return true;
		}
		if (typed.get().isBeyond()) {
			status = Messages.of("clock.beyond", entry.typed(), Figures.unit(),
					typed.get().reading().slides().map(Figures::shown).orElseThrow());
			entry = entry.refuse();
			return true;
		}
		ClockHour hour = editing.shown().hours().get(entry.cursor());
		LeafReading reading = typed.get().reading();
		String leaf = reading.slides().map(Figures::shown)
				.orElseGet(() -> Messages.of(reading.lightly() ? "clock.dragsLightly" : "clock.drags"));
		status = typed.get().asTyped() ? Messages.of("clock.taken", hour, leaf)
				: Messages.of("clock.rounded", hour, entry.typed(), leaf);
		proposal = Optional.empty();
		int read = entry.cursor();
		entry = entry.down(Math.max(editing.readings().size(), read + 1), editing.shown().hours().size());
		if (read == editing.shown().hours().size() - 1) {
			status += " " + Messages.of("clock.allRead");
		}
		editing.read(read, reading);
		return true;
	}

	/** Back a character, or an hour. */
	public void back() {
		entry = entry.back();
	}

	/** To the hour before. */
	public void up() {
		entry = entry.up();
	}

	/** To the hour after, as far as there are readings. */
	public void down() {
		entry = entry.down(editing.readings().size(), editing.shown().hours().size());
	}

	/** To an hour, if it is read, or the first that is not. */
	public void goTo(ClockHour hour) {
		int index = editing.shown().hours().indexOf(hour);
		if (index >= 0 && index <= editing.readings().size()) {
			entry = new ReadingEntry(index, "");
			selected = Optional.empty();
		}
	}

	/** The next readings begin another round; those typed before stay in the text. */
	public void anotherRound() {
		editing.beginAnotherRound();
		entry = new ReadingEntry(0, "");
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

	/** Adds a piece of the thinnest film where the gap is widest, and chooses it. */
	public void add() {
		if (editing.shown().job().isEmpty() || editing.readings().isEmpty() || editing.shown().films().isEmpty()) {
			status = Messages.of("clock.noPiece");
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
		status = proposal.map(ClockSession::inWords).orElse("");
		proposal = proposal.filter(ClockProposal::isSolved);
	}

	private static String inWords(ClockProposal proposal) {
		String words = String.join("; ", proposal.words());
		return proposal.answer().filter(seat -> proposal.isSolved())
				.map(seat -> Messages.of("clock.proposal", toDo(seat), Chance.of(seat.chanceNow()),
						Chance.of(seat.chance()), words)).orElse(words);
	}

	private static String toDo(SeatAnswer seat) {
		return seat.nothing() ? Messages.of("clock.nothing") : SeatWords.toDo(seat);
	}

	/** Writes the proposal. */
	public void apply() {
		proposal.ifPresent(answer -> {
			proposal = Optional.empty();
			status = "";
			editing.apply(answer);
		});
	}
}

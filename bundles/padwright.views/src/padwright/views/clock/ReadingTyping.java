package padwright.views.clock;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.Shown;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;
import padwright.workup.words.LengthWords;
import padwright.workup.words.ShownUnit;

/** Readings typed in turn, one stroke each or a figure that Enter ends; after the last hour it goes on to another key. */
public final class ReadingTyping {

	private final ClockEditing editing;
	private final Runnable onStroke;
	private final Typeahead ahead = new Typeahead();
	private ReadingEntry entry = new ReadingEntry(0, "");
	private String status = "";
	private Function<KeyJob, Optional<String>> nextKey = row -> Optional.empty();
	private Consumer<String> onGo = key -> {
	};

	/** @param onStroke whenever something is typed */
	ReadingTyping(ClockEditing editing, Runnable onStroke) {
		this.editing = editing;
		this.onStroke = onStroke;
	}

	/**
	 * Has the last hour of a key go on to another key.
	 *
	 * @param next the key to go on to; nothing to stay
	 * @param go told of the key whose row is to be shown
	 */
	public void onAllRead(Function<KeyJob, Optional<String>> next, Consumer<String> go) {
		nextKey = next;
		onGo = go;
	}

	/** Begins at the first hour that is not read. */
	void start() {
		status = "";
		entry = ReadingEntry.start(editing.readings().size());
	}

	/** A row is shown as its text says now. */
	void shown() {
		entry = new ReadingEntry(Math.min(entry.cursor(), editing.readings().size()), entry.typed(), entry.refused());
		status = editing.fault().orElse(status);
		editing.shown().job().map(KeyJob::name).ifPresent(ahead::arrive);
		depart();
	}

	private void depart() {
		if (editing.isSettled()) {
			ahead.depart().ifPresent(onGo);
		}
	}

	/** Goes to another key as soon as all that was typed stands in the text; what is typed until then is for that key. */
	public void leaveFor(String key) {
		if (!ahead.isUnderWay()) {
			ahead.leaveFor(key, editing.shown().job().map(KeyJob::name).orElse(""));
			depart();
		}
	}

	/** Whether the row of another key is waited for. */
	public boolean isLeaving() {
		return ahead.isUnderWay();
	}

	/** Does something now, or once the row that is waited for is shown. */
	public void inTurn(Runnable stroke) {
		if (ahead.isUnderWay()) {
			ahead.add(stroke);
		} else {
			stroke.run();
		}
	}

	/** A stroke of a reading; false if it cannot belong to one. */
	public boolean type(char stroke) {
		boolean canBe = ReadingEntry.takes(stroke) || stroke == ReadingKeys.ALL_DRAG;
		if (ahead.isUnderWay() && canBe) {
			ahead.add(() -> type(stroke));
			return true;
		}
		boolean isReading = stroke != ReadingEntry.LIGHT_DRAG || editing.shown().isGraded();
		if (!canBe || !isReading || hours().isEmpty()) {
			return false;
		}
		if (stroke == ReadingKeys.ALL_DRAG) {
			allDrag();
		} else {
			keys().reading(stroke).filter(reading -> entry.isNew())
					.ifPresentOrElse(this::stroke, () -> figure(stroke));
		}
		return true;
	}

	private void figure(char character) {
		if (isAllRead()) {
			status = Messages.of("clock.alreadyRead");
		} else if (entry.isFull()) {
			status = Messages.of("clock.noMore", entry.typed());
		} else {
			onStroke.run();
			entry = entry.with(character);
		}
	}

	/** A whole reading, as a touch says it; of this hour. */
	public void stroke(LeafReading reading) {
		if (isAllRead()) {
			status = Messages.of("clock.alreadyRead");
		} else if (!entry.isNew()) {
			status = Messages.of("clock.endFirst", entry.typed());
		} else if (!reading.lightly() || editing.shown().isGraded()) {
			take(List.of(reading), taken(reading));
		} else {
			status = Messages.of("clock.notGraded");
		}
	}

	/** The finest leaf drags at every hour that is still to be read. */
	public void allDrag() {
		if (isAllRead()) {
			status = Messages.of("clock.alreadyRead");
		} else if (entry.isNew()) {
			take(Collections.nCopies(hours().size() - entry.cursor(), LeafReading.DRAGS), Messages.of("clock.allDrag"));
		} else {
			status = Messages.of("clock.endFirst", entry.typed());
		}
	}

	/**
	 * Takes the figure that is typed as the reading of the hour and goes to the next; false where none is typed. What cannot
	 * be a reading stays typed, and is told why.
	 */
	public boolean enter() {
		if (ahead.isUnderWay()) {
			ahead.add(this::enter);
			return true;
		}
		if (entry.typed().isEmpty()) {
			return false;
		}
		Optional<TypedReading> typed = TypedReading.of(entry.typed(), editing.shown().leaves());
		if (typed.isEmpty()) {
			refuse(Messages.of("clock.noReading", entry.typed(), ShownUnit.symbol()));
		} else if (typed.get().isBeyond()) {
			refuse(Messages.of("clock.beyond", entry.typed(), ShownUnit.symbol(),
					typed.get().reading().slides().map(Figures::shown).orElseThrow()));
		} else {
			LeafReading reading = typed.get().reading();
			take(List.of(reading), typed.get().asTyped() ? taken(reading)
					: Messages.of("clock.rounded", hour(), entry.typed(), ReadingWords.of(reading)));
		}
		return true;
	}

	/** A figure that an indicator sent is the reading of this hour, as if it was typed and ended. */
	public void measured(Length length) {
		if (isAllRead()) {
			status = Messages.of("clock.alreadyRead");
		} else if (!entry.isNew()) {
			status = Messages.of("clock.endFirst", entry.typed());
		} else if (length.signum() < 0) {
			status = Messages.of("clock.belowZero", Figures.shown(length), ShownUnit.symbol());
		} else {
			entry = new ReadingEntry(entry.cursor(), length.in(Shown.unit(), LengthWords.decimals()).toPlainString());
			enter();
		}
	}

	private void refuse(String why) {
		status = why;
		entry = entry.refuse();
	}

	private String taken(LeafReading reading) {
		return Messages.of("clock.taken", hour(), ReadingWords.of(reading));
	}

	private void take(List<LeafReading> read, String told) {
		onStroke.run();
		int from = entry.cursor();
		editing.read(from, read);
		if (editing.fault().isPresent()) {
			refuse(editing.fault().get());
			return;
		}
		status = told;
		entry = ReadingEntry.start(from + read.size());
		if (isAllRead()) {
			status += " " + Messages.of("clock.allRead");
			editing.shown().job().flatMap(nextKey).ifPresent(this::leaveFor);
		}
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
		entry = entry.down(editing.readings().size());
	}

	/** To an hour, if it is read, or the first that is not. */
	public void goTo(ClockHour hour) {
		int index = hours().indexOf(hour);
		if (index >= 0 && index <= editing.readings().size()) {
			onStroke.run();
			entry = ReadingEntry.start(index);
		}
	}

	/** What one stroke says in this row. */
	public ReadingKeys keys() {
		return ReadingKeys.of(editing.shown().leaves(), editing.shown().isGraded());
	}

	/** Whether there is no hour that the next reading could be of. */
	public boolean isAllRead() {
		return entry.cursor() >= hours().size();
	}

	/** What is typed, and where it goes. */
	public ReadingEntry entry() {
		return entry;
	}

	/** What to tell the user now, in one line; may be empty. */
	public String status() {
		return status;
	}

	/** Tells the user something instead. */
	public void tell(String words) {
		status = words;
	}

	private List<ClockHour> hours() {
		return editing.shown().hours();
	}

	private ClockHour hour() {
		return hours().get(entry.cursor());
	}
}

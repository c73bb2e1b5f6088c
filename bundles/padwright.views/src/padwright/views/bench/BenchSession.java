package padwright.views.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;

import padwright.drawing.scene.Scene;
import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.seating.SeatAnswer;
import padwright.language.edit.TextEdit;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.views.Shown;
import padwright.views.bench.Told.Tone;
import padwright.views.clock.ClockProposal;
import padwright.views.clock.ClockSession;
import padwright.views.clock.ClockState;
import padwright.views.clock.ReadingTyping;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.LeafReading;
import padwright.workup.solve.PlacedPieces;

/**
 * Work on one key after the other with a hand on a feeler, without a window: strokes become edits of the plan's text, the
 * last hour goes on to the next key in the order of work, and what a key wants is asked for as soon as it is read.
 */
public final class BenchSession {

	private final ClockSession clock;
	private final BenchKeys keys;
	private final JobClock time;
	private Consumer<String> onGo = key -> {
	};
	private Consumer<KeyJob> onSolve = row -> {
	};
	private Consumer<Told> ear = told -> {
	};
	private boolean heard;
	private Optional<KeyJob> asked = Optional.empty();
	private String told = "";
	private boolean heldOff;
	private String indicator = "";

	/**
	 * @param onEdit as for a {@link ClockSession}
	 * @param time of the job
	 */
	public BenchSession(Predicate<List<TextEdit>> onEdit, BenchKeys keys, JobClock time) {
		this.clock = new ClockSession(onEdit);
		this.keys = keys;
		this.time = time;
		clock.typing().onAllRead(KeyOrder::nextToRead, this::go);
	}

	/** Told of the key whose row is to be shown. */
	public void onGo(Consumer<String> listener) {
		onGo = listener;
	}

	/** Told of the row to solve; the answer goes to {@link #propose}. */
	public void onSolve(Consumer<KeyJob> listener) {
		onSolve = listener;
	}

	/** Told what to say aloud. */
	public void onTold(Consumer<Told> listener) {
		ear = listener;
		heard = true;
	}

	/** Whether anything that is told reaches an ear. */
	boolean isHeard() {
		return heard;
	}

	private void go(String key) {
		onGo.accept(key);
	}

	/** Shows a row as its text says now. */
	public void show(ClockState state) {
		boolean another = state.job().isPresent() && !state.label().equals(clock.state().label());
		if (another) {
			told = "";
			asked = Optional.empty();
			ear.accept(new Told(state.label(), Tone.DONE));
		}
		clock.show(state);
		ask();
	}

	/** Asks once for each text that is read. */
	private void ask() {
		Optional<KeyJob> row = clock.state().job();
		if (!row.equals(asked) && needsAnswer()) {
			asked = row;
			told = "";
			row.ifPresent(onSolve);
		}
	}

	private boolean needsAnswer() {
		return isRead() && !isAnswered() && clock.isSettled() && !clock.typing().isLeaving();
	}

	/** What the key that is shown is called; empty for none. */
	public String label() {
		return clock.state().label();
	}

	/** Whether all hours of the round are read. */
	public boolean isRead() {
		return !clock.state().hours().isEmpty() && clock.readings().size() >= clock.state().hours().size();
	}

	/** Whether the plan says what was done after the readings that are shown. */
	public boolean isAnswered() {
		return !clock.readings().isEmpty()
				&& clock.state().job().flatMap(KeyJob::lastRound).filter(PlacedPieces::isAnswered).isPresent();
	}

	/** Whether an answer is being worked out. */
	public boolean isSolving() {
		return needsAnswer() && clock.proposal().isEmpty() && told.isEmpty();
	}

	/** Shows what a solve came to; another row's is passed over. */
	public void propose(ClockProposal proposal) {
		if (!needsAnswer() || !clock.state().job().map(KeyJob::name).equals(Optional.of(proposal.key().name()))) {
			return;
		}
		clock.propose(Optional.of(proposal));
		told = proposal.isSolved() ? "" : String.join("; ", proposal.words());
		heldOff = proposal.answer().filter(SeatAnswer::heldOff).isPresent();
		ear.accept(new Told(proposal.toDo().orElse(told), Tone.DONE));
	}

	/** Whether there is no answer because the key does not close. */
	boolean isHeldOff() {
		return heldOff && !told.isEmpty();
	}

	/** Why there is no answer; empty where there is one, or none is asked for. */
	public String noAnswer() {
		return told;
	}

	/** The step that Enter does now: the name of its action. */
	public Optional<String> offered() {
		return BenchPicture.of(this).workButtons().stream().filter(BenchPicture.Push::offered)
				.map(BenchPicture.Push::id).filter(id -> !id.equals(BenchAction.PAUSE.name())).findFirst();
	}

	/** A key was pressed, by its name; false if it means nothing. */
	public boolean press(String key) {
		if (!isFigure(key) && keys.action(key).isEmpty()) {
			return false;
		}
		clock.typing().inTurn(() -> pressed(key));
		return true;
	}

	private static boolean isFigure(String key) {
		return key.length() == 1 && Character.isDigit(key.charAt(0));
	}

	private void pressed(String key) {
		boolean inFigure = !clock.typing().entry().typed().isEmpty() || Shown.isTypedInFull();
		if (isFigure(key) || inFigure && ".,-".contains(key)) {
			heard(() -> clock.type(key.charAt(0)));
		} else {
			keys.action(key).ifPresent(this::perform);
		}
	}

	/** A part of the drawing was touched: a leaf, an hour, or the button of an action. */
	public void touch(String id) {
		clock.typing().inTurn(() -> {
			if (id.startsWith(BenchPicture.LEAF)) {
				Optional.ofNullable(clock.typing().keys().leaves().get(id.charAt(BenchPicture.LEAF.length())))
						.ifPresent(leaf -> read(LeafReading.slides(leaf)));
			} else if (id.startsWith(BenchPicture.HOUR)) {
				clock.state().hours().stream().filter(hour -> id.equals(BenchPicture.HOUR + hour)).findFirst()
						.ifPresent((ClockHour hour) -> clock.typing().goTo(hour));
			} else {
				perform(BenchAction.valueOf(id));
			}
		});
	}

	/** An indicator sent a length: the reading of the hour in hand. */
	public void measured(Length length) {
		clock.typing().inTurn(() -> heard(() -> clock.typing().measured(length)));
	}

	/** An indicator sent what is no length. */
	public void notMeasured(String line) {
		clock.typing().tell(Messages.of("bench.noFigure", line));
		ear.accept(new Told(clock.status(), Tone.WRONG));
	}

	/** What is said of the indicator all the time; nothing for none. */
	public void setIndicator(String words) {
		indicator = words;
	}

	/** What is said of the indicator now. */
	public String indicator() {
		return indicator;
	}

	/** The drawing of the moment, for a window of this size in mm of the display. */
	public Scene draw(Palette palette, double width, double height) {
		return BenchScene.draw(BenchPicture.of(this), palette, width, height);
	}

	private void perform(BenchAction action) {
		ReadingTyping typing = clock.typing();
		switch (action) {
		case DRAGS -> read(LeafReading.DRAGS);
		case DRAGS_LIGHTLY -> read(LeafReading.DRAGS_LIGHTLY);
		case ALL_DRAG -> heard(typing::allDrag);
		case ENTER -> enter();
		case BACK -> back();
		case FORWARD -> typing.down();
		case NEXT -> leave(1);
		case PREVIOUS -> leave(-1);
		case PLACED -> placed();
		case OUT -> out();
		case AGAIN -> clock.anotherRound();
		case PAUSE -> time.toggle();
		case SAY -> ear.accept(new Told(BenchWords.where(this), Tone.DONE));
		}
	}

	private void read(LeafReading reading) {
		heard(() -> clock.typing().stroke(reading));
	}

	/** What is read is told to ears, and what says nothing here too. */
	private void heard(Runnable stroke) {
		List<LeafReading> before = clock.readings();
		String typed = clock.typing().entry().typed();
		stroke.run();
		List<LeafReading> after = clock.readings();
		if (!after.equals(before)) {
			ear.accept(new Told(clock.status(), BenchWords.tone(before, after)));
		} else if (Objects.equals(typed, clock.typing().entry().typed()) && !clock.status().isEmpty()) {
			ear.accept(new Told(clock.status(), Tone.WRONG));
		}
	}

	private void enter() {
		if (!clock.typing().entry().typed().isEmpty()) {
			heard(clock.typing()::enter);
		} else if (clock.proposal().isPresent()) {
			placed();
		} else if (isAnswered()) {
			clock.anotherRound();
		} else {
			clock.typing().tell(Messages.of("bench.nothingOffered"));
		}
	}

	private void back() {
		boolean atStart = clock.typing().entry().cursor() == 0 && clock.typing().entry().typed().isEmpty();
		if (atStart) {
			leave(-1);
		} else {
			clock.typing().back();
		}
	}

	private void leave(int step) {
		Optional<String> beside = clock.state().job().flatMap(row -> KeyOrder.beside(row, step));
		beside.ifPresentOrElse(clock.typing()::leaveFor,
				() -> clock.typing().tell(Messages.of(step > 0 ? "bench.lastKey" : "bench.firstKey")));
	}

	private void placed() {
		if (clock.proposal().isPresent()) {
			clock.apply();
			clock.typing().tell(Messages.of("bench.noted"));
		} else {
			clock.typing().tell(Messages.of("bench.nothingOffered"));
		}
	}

	private void out() {
		boolean noted = clock.takeOutLast();
		clock.typing().tell(Messages.of(noted ? "bench.noted" : "bench.noneToTakeOut"));
	}

	/** What the clock of the row says. */
	ClockSession clock() {
		return clock;
	}

	BenchKeys keys() {
		return keys;
	}

	/** The clock of the job. */
	public JobClock time() {
		return time;
	}
}

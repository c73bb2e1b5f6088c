package padwright.views.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import padwright.engine.clock.ClockHour;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.clock.ClockSession;
import padwright.views.clock.ReadingEntry;
import padwright.views.clock.ReadingKeys;
import padwright.workup.solve.LeafReading;

/**
 * What bench mode shows at a moment.
 *
 * @param label of the key
 * @param place of the key in the order of work, in words
 * @param cells the hours, in turn
 * @param toDo what is to be done now
 * @param chances lines about how sure it is
 * @param note in one line; may be empty
 * @param indicator what is said of the indicator; may be empty
 * @param time of the job
 * @param running whether the clock of the job runs
 * @param readingButtons for readings
 * @param workButtons for all else
 */
record BenchPicture(String label, String place, List<Cell> cells, String toDo, List<String> chances, String note,
		String indicator, String time, boolean running, List<Push> readingButtons, List<Push> workButtons) {

	/** What is known of an hour. */
	enum Known {
		/** Not read yet. */
		OPEN,
		/** The next reading is of this hour. */
		NEXT, DRAGS, SLIDES
	}

	/**
	 * An hour.
	 *
	 * @param text its reading, or what is typed of it
	 * @param current whether the next reading is of this hour
	 */
	record Cell(ClockHour hour, String text, Known known, boolean current, boolean doubtful) {
	}

	/**
	 * Something to touch.
	 *
	 * @param id {@code leaf-} and a digit, or the name of an action
	 * @param key that does the same
	 * @param offered whether it is the next step
	 */
	record Push(String id, String text, String key, boolean enabled, boolean offered) {
	}

	static final String LEAF = "leaf-";
	static final String HOUR = "hour-";

	static BenchPicture of(BenchSession session) {
		ClockSession clock = session.clock();
		String place = clock.state().job().map(row -> Messages.of("bench.place", KeyOrder.place(row) + 1,
				KeyOrder.of(row.plan()).size(), row.plan().plan().getName())).orElse("");
		return new BenchPicture(clock.state().label(), place, cells(clock), BenchWords.toDo(session),
				BenchWords.chances(session), BenchWords.note(session), session.indicator(),
				session.time().shown(), session.time().isRunning(), readingButtons(session), workButtons(session));
	}

	private static List<Cell> cells(ClockSession clock) {
		List<Cell> cells = new ArrayList<>();
		List<LeafReading> readings = clock.readings();
		ReadingEntry entry = clock.typing().entry();
		for (int index = 0; index < clock.state().hours().size(); index++) {
			ClockHour hour = clock.state().hours().get(index);
			boolean current = index == entry.cursor();
			Optional<LeafReading> reading = index < readings.size() ? Optional.of(readings.get(index)) : Optional.empty();
			String text = current && !entry.typed().isEmpty() ? entry.typed() : reading.map(BenchPicture::text).orElse("");
			cells.add(new Cell(hour, text, reading.map(BenchPicture::known).orElse(current ? Known.NEXT : Known.OPEN),
					current, clock.state().doubtful().contains(hour)));
		}
		return cells;
	}

	private static String text(LeafReading reading) {
		return reading.slides().map(Figures::shown).orElse(reading.lightly() ? "\u2013" : "\u2022");
	}

	private static Known known(LeafReading reading) {
		return reading.slides().isPresent() ? Known.SLIDES : Known.DRAGS;
	}

	private static List<Push> readingButtons(BenchSession session) {
		ReadingKeys keys = session.clock().typing().keys();
		boolean open = !session.clock().typing().isAllRead();
		List<Push> all = new ArrayList<>();
		all.add(push(session, BenchAction.ALL_DRAG, open, false));
		all.add(push(session, BenchAction.DRAGS, open, false));
		if (keys.graded()) {
			all.add(push(session, BenchAction.DRAGS_LIGHTLY, open, false));
		}
		keys.digits().forEach(digit -> all.add(new Push(LEAF + digit, Figures.shown(keys.leaves().get(digit)),
				digit.toString(), open, false)));
		all.add(push(session, BenchAction.BACK, true, false));
		return all;
	}

	private static List<Push> workButtons(BenchSession session) {
		ClockSession clock = session.clock();
		boolean proposed = clock.proposal().isPresent();
		return List.of(push(session, BenchAction.PREVIOUS, true, false),
				push(session, BenchAction.PLACED, proposed, proposed),
				push(session, BenchAction.OUT, !clock.state().earlier().isEmpty(), false),
				push(session, BenchAction.AGAIN, session.isRead(), !proposed && session.isAnswered()),
				push(session, BenchAction.PAUSE, true, !session.time().isRunning()),
				push(session, BenchAction.SAY, session.isHeard(), false), push(session, BenchAction.NEXT, true, false));
	}

	private static Push push(BenchSession session, BenchAction action, boolean enabled, boolean offered) {
		return new Push(action.name(), Messages.of("bench.act." + action.name().toLowerCase(Locale.ROOT)),
				key(session.keys(), action, offered), enabled, offered);
	}

	/** What is offered is done by Enter, too. */
	private static String key(BenchKeys keys, BenchAction action, boolean offered) {
		return offered && action != BenchAction.PAUSE
				? Messages.of("bench.keys", keys.key(action), keys.key(BenchAction.ENTER)) : keys.key(action);
	}
}

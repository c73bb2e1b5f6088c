package padwright.workup.next;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One thing to do, or to wait for, at one instrument.
 *
 * @param plan its name
 * @param instrument label of the system and serial, as far as said
 * @param player or empty
 * @param stage the stage that was reached last, or empty
 * @param kind what kind of thing
 * @param what in words, without a full stop
 * @param keys labels of the keys that it is about, or empty
 * @param from the first day on which it can be done, where it is not at once
 * @param due when the instrument is promised
 * @param hand who wrote last
 */
public record NextStep(String plan, String instrument, String player, String stage, Kind kind, String what, String keys,
		Optional<LocalDate> from, Optional<LocalDate> due, Optional<String> hand) {

	/** What kind of thing, in the order in which one plan's are told. */
	public enum Kind {
		/** Something has to come, or somebody to answer. */
		WAIT,
		/** A pad has to rest over night and be felt again. */
		MORNING,
		/** Work at the bench. */
		WORK,
		/** It can be handed over. */
		DELIVER,
		/** It is at home and shall be looked at once more. */
		SECOND_LOOK
	}

	/** Whether it can be done on a day. */
	public boolean isReady(LocalDate today) {
		return kind != Kind.WAIT && from.filter(day -> day.isAfter(today)).isEmpty();
	}

	/** Whether the promised day is past. */
	public boolean isLate(LocalDate today) {
		return due.filter(day -> day.isBefore(today)).isPresent();
	}
}

package padwright.workup.next;

import java.time.LocalDate;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import padwright.workup.words.Phrase;

/**
 * One thing to do, or to wait for, at one instrument.
 *
 * @param element of the plan that it is about
 * @param plan its name
 * @param instrument label of the system and serial, as far as said
 * @param player or empty
 * @param stage the stage that was reached last, or empty
 * @param kind what kind of thing
 * @param heldBy the kind of what it has to wait for first, where it has to
 * @param what without a full stop
 * @param keys labels of the keys that it is about, or empty
 * @param from the first day on which it can be done, where it is not at once
 * @param due when the instrument is promised
 * @param hand who wrote last
 */
public record NextStep(EObject element, String plan, String instrument, String player, String stage, Kind kind,
		Optional<Kind> heldBy, Phrase what, String keys, Optional<LocalDate> from, Optional<LocalDate> due,
		Optional<String> hand) {

	/** What kind of thing, in the order in which one plan's are told. */
	public enum Kind {
		/** The player has to agree to an estimate. */
		AGREE,
		/** Something else has to come, or somebody to answer. */
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

	/** What is to be done, and behind what it has to wait. */
	public Phrase told() {
		return heldBy.map(kind -> kind == Kind.AGREE ? Phrase.of("next.heldBy.agree", what)
				: Phrase.of("next.heldBy.wait", what)).orElse(what);
	}

	/** Whether it can be done on a day. */
	public boolean isReady(LocalDate today) {
		return heldBy.isEmpty() && kind != Kind.AGREE && kind != Kind.WAIT && from.filter(day -> day.isAfter(today)).isEmpty();
	}

	/** Whether the promised day is past. */
	public boolean isLate(LocalDate today) {
		return due.filter(day -> day.isBefore(today)).isPresent();
	}
}

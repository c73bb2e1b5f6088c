package padwright.workup.mechanism;

import java.util.List;

import padwright.engine.mechanism.Cause;
import padwright.engine.mechanism.Clash;
import padwright.engine.mechanism.Driven;
import padwright.engine.mechanism.KeyLink;
import padwright.engine.mechanism.Pushed;
import padwright.workup.words.Listed;
import padwright.workup.words.Phrase;

/** Why a key moves or cannot move. */
public final class ClashPhrase {

	private ClashPhrase() {
	}

	/** As in {@code Gs: L4 presses Gs; but R1 presses F, F keeps Gs shut}. */
	public static Phrase of(Clash clash) {
		return clash.opposing().isEmpty() ? Phrase.of("mechanism.circle", clash.key(), chain(clash.moving()))
				: Phrase.of("mechanism.clash", clash.key(), chain(clash.moving()), chain(clash.opposing()));
	}

	/** A chain from the finger on. */
	private static Listed chain(List<Cause> chain) {
		return Listed.of(chain.stream().map(ClashPhrase::of).toList());
	}

	private static Phrase of(Cause cause) {
		if (cause instanceof Driven driven) {
			return conditional(driven.link());
		}
		return ((Pushed) cause).touch().map(touch -> Phrase.of("mechanism.presses", touch, cause.key()))
				.orElseGet(() -> Phrase.of("mechanism.pressed", cause.key()));
	}

	private static Phrase conditional(KeyLink link) {
		return link.when().map(on -> on.isMoved() ? Phrase.of("mechanism.when", effect(link), on.key())
				: Phrase.of("mechanism.unless", effect(link), on.key())).orElseGet(() -> effect(link));
	}

	private static Phrase effect(KeyLink link) {
		return switch (link.effect()) {
		case CLOSES -> Phrase.of("mechanism.closes", link.driver(), link.driven());
		case OPENS -> Phrase.of("mechanism.opens", link.driver(), link.driven());
		case HOLDS -> Phrase.of("mechanism.holds", link.driver(), link.driven());
		};
	}
}

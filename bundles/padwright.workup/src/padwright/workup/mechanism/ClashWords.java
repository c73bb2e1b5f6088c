package padwright.workup.mechanism;

import java.util.List;
import java.util.stream.Collectors;

import padwright.engine.mechanism.Cause;
import padwright.engine.mechanism.Clash;
import padwright.engine.mechanism.Driven;
import padwright.engine.mechanism.KeyLink;
import padwright.engine.mechanism.Pushed;
import padwright.workup.words.Messages;

/** Why a key moves or cannot move, in the language of the program. */
public final class ClashWords {

	private ClashWords() {
	}

	/** As in {@code Gs: L4 presses Gs; but R1 presses F, F keeps Gs shut}. */
	public static String of(Clash clash) {
		return clash.opposing().isEmpty() ? Messages.of("mechanism.circle", clash.key(), of(clash.moving()))
				: Messages.of("mechanism.clash", clash.key(), of(clash.moving()), of(clash.opposing()));
	}

	/** A chain from the finger on. */
	public static String of(List<Cause> chain) {
		return chain.stream().map(ClashWords::of).collect(Collectors.joining(", "));
	}

	private static String of(Cause cause) {
		if (cause instanceof Driven driven) {
			return conditional(driven.link());
		}
		return ((Pushed) cause).touch().map(touch -> Messages.of("mechanism.presses", touch, cause.key()))
				.orElseGet(() -> Messages.of("mechanism.pressed", cause.key()));
	}

	private static String conditional(KeyLink link) {
		return link.when().map(on -> on.isMoved() ? Messages.of("mechanism.when", effect(link), on.key())
				: Messages.of("mechanism.unless", effect(link), on.key())).orElseGet(() -> effect(link));
	}

	private static String effect(KeyLink link) {
		return switch (link.effect()) {
		case CLOSES -> Messages.of("mechanism.closes", link.driver(), link.driven());
		case OPENS -> Messages.of("mechanism.opens", link.driver(), link.driven());
		case HOLDS -> Messages.of("mechanism.holds", link.driver(), link.driven());
		};
	}
}

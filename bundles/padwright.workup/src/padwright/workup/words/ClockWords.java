package padwright.workup.words;

import java.util.stream.Stream;

import padwright.model.keysystem.ClockConvention;
import padwright.model.keysystem.KeySystem;
import padwright.model.systems.EffectiveSystem;

/** How a key system reads the clock, in words. */
public final class ClockWords {

	private static final String DEFAULT_REFERENCE = "hinge";

	private ClockWords() {
	}

	/** What 12 o'clock looks at, in the language of the reader. */
	public static String inWords(KeySystem system) {
		return Messages.of("term.ClockReference." + twelveLooksAt(system));
	}

	/** What 12 o'clock looks at, as the grammar calls it, by the innermost system that says; the hinge if none does. */
	public static String twelveLooksAt(KeySystem system) {
		return EffectiveSystem.lineage(system).stream().map(KeySystem::getClock).flatMap(Stream::ofNullable)
				.reduce((outer, inner) -> inner).map(ClockConvention::getReference)
				.map(reference -> reference.getLiteral()).orElse(DEFAULT_REFERENCE);
	}
}

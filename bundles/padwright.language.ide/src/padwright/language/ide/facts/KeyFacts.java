package padwright.language.ide.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.language.ide.words.Messages;

import padwright.model.Present;
import padwright.model.keysystem.Key;
import padwright.model.systems.EffectiveKey;

/** A key as it is in a system, in words. */
public final class KeyFacts {

	private KeyFacts() {
	}

	/** One line, as in {@code F, open, by R1, closes Fs, As, hole 14.3 mm, cup 17.5 mm deep 2.95 mm}. */
	public static String of(EffectiveKey key) {
		List<String> parts = new ArrayList<>();
		parts.add(key.label());
		parts.add(Messages.of("key." + key.posture().getLiteral()));
		key.touch().ifPresent(touch -> parts.add(Messages.of("key.by", touch.getLiteral())));
		if (!key.couplings().isEmpty()) {
			parts.add(Messages.of("key.closes", key.couplings().stream()
					.map(coupling -> Present.of(coupling.getDriven())).flatMap(Optional::stream).map(Key::getName)
					.collect(Collectors.joining(", "))));
		}
		key.holeDiameter().ifPresent(hole -> parts.add(Messages.of("key.hole", Figures.millimetres(hole))));
		key.cupDiameter().ifPresent(cup -> parts.add(key.cupDepth()
				.map(depth -> Messages.of("key.deepCup", Figures.millimetres(cup), Figures.millimetres(depth)))
				.orElseGet(() -> Messages.of("key.cup", Figures.millimetres(cup)))));
		key.arm().ifPresent(arm -> parts.add(Messages.of("key.arm", Figures.millimetres(arm))));
		return String.join(", ", parts);
	}
}

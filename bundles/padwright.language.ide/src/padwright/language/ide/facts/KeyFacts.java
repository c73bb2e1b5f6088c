package padwright.language.ide.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.language.ide.words.Messages;

import padwright.model.Resolved;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveKey;
import padwright.workup.words.LengthWords;

/** A key as it is in a system, in words. */
public final class KeyFacts {

	private KeyFacts() {
	}

	/** One line, as in {@code F, open, by R1, closes Fs, As, hole 14.3 mm, cup 17.5 mm deep 2.95 mm}. */
	public static String of(EffectiveKey key) {
		List<String> parts = new ArrayList<>();
		parts.add(key.label());
		parts.add(Messages.of("key." + key.posture().getLiteral()));
		if (!key.touches().isEmpty()) {
			parts.add(Messages.of("key.by", key.touches().stream().flatMap(touch -> Resolved.of(touch).stream())
					.map(Touch::getName).collect(Collectors.joining(", "))));
		}
		key.whole().ifPresent(whole -> parts.add(Messages.of("key.with", whole.name())));
		driven(key.closes()).ifPresent(names -> parts.add(Messages.of("key.closes", names)));
		driven(key.opens()).ifPresent(names -> parts.add(Messages.of("key.opens", names)));
		driven(key.holds()).ifPresent(names -> parts.add(Messages.of("key.holds", names)));
		key.over().ifPresent(hole -> parts.add(Messages.of("key.over", hole.label())));
		key.holeDiameter().ifPresent(hole -> parts.add(Messages.of("key.hole", LengthWords.millimetres(hole, 2) + " mm")));
		key.cupDiameter().ifPresent(cup -> parts.add(key.cupDepth()
				.map(depth -> Messages.of("key.deepCup", LengthWords.millimetres(cup, 2) + " mm",
						LengthWords.millimetres(depth, 2) + " mm"))
				.orElseGet(() -> Messages.of("key.cup", LengthWords.millimetres(cup, 2) + " mm"))));
		key.perforation().ifPresent(opening -> parts.add(Messages.of("key.perforated", LengthWords.millimetres(opening, 2) + " mm")));
		key.arm().ifPresent(arm -> parts.add(Messages.of("key.arm", LengthWords.millimetres(arm, 2) + " mm")));
		return String.join(", ", parts);
	}

	/** With the ratio where it is said: travel at the driven key's pad for travel at the driver's. */
	private static Optional<String> driven(List<Coupling> couplings) {
		return couplings.stream().flatMap(coupling -> Resolved.of(coupling.getDriven()).map(key -> name(coupling, key)).stream())
				.reduce((some, more) -> some + ", " + more);
	}

	private static String name(Coupling coupling, Key driven) {
		String name = coupling.getRatio() == null ? driven.getName()
				: Messages.of("key.ratio", driven.getName(), coupling.getRatio().toPlainString());
		return Resolved.of(coupling.getCondition()).map(Key::getName)
				.map(other -> Messages.of(coupling.isUnpressed() ? "key.unless" : "key.when", name, other)).orElse(name);
	}
}

package padwright.workup.mechanism;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.mechanism.Effect;
import padwright.engine.mechanism.KeyLink;
import padwright.model.Lengths;
import padwright.model.keysystem.Coupling;
import padwright.model.systems.EffectiveKey;

/** The couplings of a system between its pieces. What other checks tell of is left out or taken as not said. */
final class Links {

	private final Pieces pieces;
	private final Map<String, KeyLink> found = new LinkedHashMap<>();

	private Links(Pieces pieces) {
		this.pieces = pieces;
		pieces.keys().forEach(this::add);
	}

	static List<KeyLink> of(Pieces pieces) {
		return List.copyOf(new Links(pieces).found.values());
	}

	private void add(EffectiveKey driver) {
		driver.closes().forEach(coupling -> add(driver, Effect.CLOSES, coupling));
		driver.opens().forEach(coupling -> add(driver, Effect.OPENS, coupling));
		driver.holds().forEach(coupling -> add(driver, Effect.HOLDS, coupling));
	}

	private void add(EffectiveKey driver, Effect effect, Coupling coupling) {
		String from = pieces.nameOf(driver);
		pieces.nameOf(coupling.getDriven()).filter(to -> !to.equals(from))
				.map(to -> conditional(new KeyLink(from, to, effect), coupling).with(ratio(coupling), play(coupling)))
				.ifPresent(link -> found.putIfAbsent(link.toString(), link));
	}

	private KeyLink conditional(KeyLink link, Coupling coupling) {
		return pieces.nameOf(coupling.getCondition())
				.map(key -> coupling.isUnpressed() ? link.unless(key) : link.when(key)).orElse(link);
	}

	private static BigDecimal ratio(Coupling coupling) {
		return Optional.ofNullable(coupling.getRatio()).filter(ratio -> ratio.signum() > 0).orElse(BigDecimal.ONE);
	}

	private static Length play(Coupling coupling) {
		return Lengths.of(coupling.getPlay(), coupling).filter(play -> play.signum() > 0).orElse(Length.ZERO);
	}
}

package padwright.workup.checks.systems;

import java.util.function.BiConsumer;

import padwright.model.Resolved;
import padwright.model.keysystem.Change;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.KeySystem;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;

/** What a system says itself of keys: its own, and those of its base that it changes. */
final class WrittenKeys {

	private WrittenKeys() {
	}

	/** Each with the key that comes of it. */
	static void forEach(KeySystem system, BiConsumer<KeyFeatures, EffectiveKey> what) {
		EffectiveSystem effective = EffectiveSystem.of(system);
		for (Key key : system.getKeys()) {
			effective.key(key).ifPresent(whole -> what.accept(key, whole));
		}
		for (Change change : system.getChanges()) {
			if (change instanceof KeyChange changed) {
				Resolved.of(changed.getKey()).flatMap(effective::key).ifPresent(whole -> what.accept(changed, whole));
			}
		}
	}
}

package padwright.workup.harm;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.acoustics.Cover;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.LeakHarm;
import padwright.engine.diagnosis.Ear;
import padwright.engine.diagnosis.HeardLeaks;
import padwright.model.systems.EffectiveKey;
import padwright.workup.leak.PadAsFelt;
import padwright.workup.leak.PadsAsFelt;
import padwright.workup.service.ServicePlan;
import padwright.workup.sound.FingeredTone;
import padwright.workup.sound.SystemSound;

/** What is heard of leaking pads in the notes of a plan's instrument. */
public final class PadHearing {

	private static final int SIZES = 16;
	/** Less than any leak that is heard or felt. */
	private static final double TIGHT = 1e-4;

	private PadHearing() {
	}

	/** By the names of fingerings and keys; nothing where the key system lacks a size without which there is no sound. */
	public static Optional<HeardLeaks> of(ServicePlan plan) {
		return plan.plan().getSystem() == null ? Optional.empty() : of(plan, SystemSound.of(plan.plan().getSystem()));
	}

	private static Optional<HeardLeaks> of(ServicePlan plan, SystemSound sound) {
		return sound.instrument()
				.map(instrument -> new HeardLeaks(weakening(plan, sound, instrument), sizes(plan), Ear.USUAL));
	}

	private static Map<String, Map<String, Double>> weakening(ServicePlan plan, SystemSound sound,
			Instrument instrument) {
		Map<String, List<String>> keys = plan.system().keys().stream().map(EffectiveKey::name)
				.filter(key -> sound.holeUnder(key).isPresent())
				.collect(Collectors.groupingBy(key -> sound.holeUnder(key).get()));
		Map<String, List<Cover.Leaking>> leaks = keys.keySet().stream()
				.collect(Collectors.toMap(hole -> hole, hole -> List.of(LeakSize.ONE)));
		Map<String, Map<String, Double>> weakening = new LinkedHashMap<>();
		LeakHarm.of(instrument, sound.tones().stream().map(FingeredTone::note).toList(), leaks).forEach(harm -> {
			Map<String, Double> ofNote = weakening.computeIfAbsent(harm.note().label(), note -> new LinkedHashMap<>());
			keys.get(harm.hole()).forEach(key -> ofNote.put(key, Math.max(0, 1 / harm.left() - 1)));
		});
		return weakening;
	}

	private static Map<String, List<Double>> sizes(ServicePlan plan) {
		return PadsAsFelt.of(plan).pads().stream()
				.collect(Collectors.toMap(pad -> pad.job().name(), PadHearing::sizes));
	}

	private static List<Double> sizes(PadAsFelt pad) {
		return LeakSize.spread(pad.asFelt().gaps(), SIZES).stream().map(LeakSize::of)
				.map(size -> Math.max(TIGHT, size)).toList();
	}
}

package padwright.workup.sound;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

import padwright.engine.acoustics.AirModel;
import padwright.engine.acoustics.BorePoint;
import padwright.engine.acoustics.Fingering;
import padwright.engine.acoustics.Hole;
import padwright.engine.acoustics.Instrument;
import padwright.engine.acoustics.Layout;
import padwright.engine.acoustics.Measure;
import padwright.engine.acoustics.SoundModel;
import padwright.engine.length.Length;
import padwright.engine.mechanism.Pressing;
import padwright.engine.pitch.NoteName;
import padwright.model.keysystem.KeySystem;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;
import padwright.workup.mechanism.SystemHole;
import padwright.workup.mechanism.SystemMechanism;

/**
 * A key system as an air column, with what its fingerings should sound: the one way from a system to
 * {@link padwright.engine.acoustics}. Holes are named there as in the mechanism, which for a pad is the name of its key.
 * Places are from the upper end of the main joint. The air is dry and as warm as the system says.
 */
public final class SystemSound {

	/** How far a pad stands above its hole where the key system does not say (an assumption of ours; no source). */
	public static final Length USUAL_RISE = Length.millimetres("3");

	private static final double NANOMETRES = 1e9;

	private final KeySystem system;
	private final SystemMechanism mechanism;
	private final SoundModel model;
	private final Gaps gaps = new Gaps();
	private final HoleReading holes;
	private final ToneReading tones;
	private final Optional<Instrument> instrument;

	private SystemSound(KeySystem system) {
		this.system = system;
		EffectiveSystem effective = EffectiveSystem.of(system);
		mechanism = SystemMechanism.of(effective);
		model = SoundModel.in(AirModel.CHAIGNE_KERGOMARD.at(effective.temperature().doubleValue()));
		holes = new HoleReading(mechanism, gaps);
		tones = new ToneReading(mechanism);
		instrument = layout(effective).flatMap(this::instrument);
	}

	/** It bears half-typed systems: what is wanting is told by {@link #missing}. */
	public static SystemSound of(KeySystem system) {
		return new SystemSound(system);
	}

	private Optional<Layout> layout(EffectiveSystem effective) {
		if (effective.joints().isEmpty()) {
			gaps.tell(system, Advice.of("sound-size.joint", system.getName()));
		}
		List<BorePoint> bore = BoreReading.of(effective, gaps);
		Optional<MouthReading.Head> head = MouthReading.of(effective, gaps);
		head.filter(mouth -> !bore.isEmpty() && mouth.cork() < bore.get(0).place()).ifPresent(
				above -> gaps.tell(system, Advice.of("sound-size.corkOutside", system.getName())));
		if (!gaps.found().isEmpty()) {
			return Optional.empty();
		}
		try {
			List<BorePoint> sounding = head.map(mouth -> BoreReading.below(bore, mouth.cork())).orElse(bore);
			return Optional.of(new Layout(sounding, head.map(MouthReading.Head::mouth), holes.holes()));
		} catch (IllegalArgumentException impossible) {
			return refuse(impossible);
		}
	}

	private Optional<Instrument> instrument(Layout layout) {
		try {
			return Optional.of(new Instrument(layout, model));
		} catch (IllegalArgumentException impossible) {
			return refuse(impossible);
		}
	}

	private <T> Optional<T> refuse(IllegalArgumentException impossible) {
		gaps.tell(system, Advice.of("sound-impossible", system.getName(), impossible.getMessage()));
		return Optional.empty();
	}

	public KeySystem system() {
		return system;
	}

	public SystemMechanism mechanism() {
		return mechanism;
	}

	/** Sizes that are wanting or cannot be; empty where the instrument can be computed. */
	public List<MissingSize> missing() {
		return gaps.found();
	}

	/** The air column; nothing where a size is missing. */
	public Optional<Instrument> instrument() {
		return instrument;
	}

	/**
	 * The air column with holes elsewhere, as while they are dragged; nothing where that can be none.
	 *
	 * @param by how much farther down each is, by its name; below 0 for up
	 */
	public Optional<Instrument> moved(Map<String, Length> by) {
		return by.isEmpty() ? instrument : instrument.flatMap(still -> {
			Layout layout = still.layout();
			List<Hole> holes = layout.holes().stream().map(hole -> moved(hole, by.getOrDefault(hole.name(), Length.ZERO)))
					.sorted(Comparator.comparingDouble(Hole::place)).toList();
			try {
				return Optional.of(new Instrument(new Layout(layout.bore(), layout.mouth(), holes, layout.leaks()), model));
			} catch (IllegalArgumentException impossible) {
				return Optional.empty();
			}
		});
	}

	private static Hole moved(Hole hole, Length by) {
		return hole.with(Measure.PLACE, hole.place() + by.nanometres() / NANOMETRES);
	}

	/** How the holes are covered while touches are pressed; nothing where keys contradict each other. */
	public Optional<Fingering> covering(Pressing pressing) {
		return tones.covering(pressing);
	}

	/** What the instrument is computed with. */
	public SoundModel model() {
		return model;
	}

	/** The fingerings that can be pressed and have a pitch, in the order of the system. */
	public List<FingeredTone> tones() {
		return tones.tones();
	}

	/**
	 * The fingering meant by its name, as in {@code F♯4/trill from E}, by its label, or by its note however spelled.
	 */
	public Optional<FingeredTone> tone(String written) {
		return first(tone -> tone.name().equals(written))
				.or(() -> first(tone -> tone.fingering().label().filter(written::equals).isPresent()))
				.or(() -> pitch(written).flatMap(cents -> first(tone -> tone.writtenCents() == cents)));
	}

	private Optional<FingeredTone> first(Predicate<FingeredTone> meant) {
		return tones().stream().filter(meant).findFirst();
	}

	private static Optional<Integer> pitch(String written) {
		try {
			return Optional.of(NoteName.parse(written).midi() * 100);
		} catch (IllegalArgumentException notANote) {
			return Optional.empty();
		}
	}

	/** The other fingerings. */
	public List<LeftOutNote> leftOut() {
		return tones.leftOut();
	}

	/** The keys whose pads are taken to rise by {@link #USUAL_RISE} for want of a better figure. */
	public List<String> assumedRises() {
		return holes.assumedRises();
	}

	/** The holes whose undercutting is left aside, which no formula here knows. */
	public List<String> undercut() {
		return holes.undercut();
	}

	/** Whether it is blown across an embouchure hole; else it is a tube, open at its upper end. */
	public boolean hasMouth() {
		return MouthReading.joint(mechanism.system()).isPresent();
	}

	/** The key whose pad is taken to be the one over a hole; nothing for a hole under fingers alone. */
	public Optional<String> keyOver(String hole) {
		return mechanism.holes().stream().filter(each -> each.name().equals(hole)).findFirst()
				.flatMap(each -> HoleReading.key(mechanism.keysOver(each))).map(EffectiveKey::name);
	}

	/** The name of the hole under the pad of a key; nothing for a lever. */
	public Optional<String> holeUnder(String key) {
		return mechanism.holes().stream()
				.filter(hole -> mechanism.keysOver(hole).stream().anyMatch(over -> over.name().equals(key)))
				.map(SystemHole::name).findFirst();
	}
}

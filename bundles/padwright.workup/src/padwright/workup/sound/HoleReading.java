package padwright.workup.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.acoustics.Cup;
import padwright.engine.acoustics.Hole;
import padwright.engine.length.Length;
import padwright.model.keysystem.CupStyle;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveKey;
import padwright.workup.checks.Advice;
import padwright.workup.mechanism.SystemHole;
import padwright.workup.mechanism.SystemMechanism;
import padwright.workup.service.KeyRim;

/** The tone holes of a mechanism with the cups over them, from the head down. */
final class HoleReading {

	/** Depth of the opening in a pad whose cup says none (an assumption of ours; no source). */
	private static final Length USUAL_DEPTH = Length.millimetres("3");

	private final SystemMechanism mechanism;
	private final Gaps gaps;
	private final List<Hole> holes = new ArrayList<>();
	private final List<String> assumedRises = new ArrayList<>();
	private final List<String> undercut = new ArrayList<>();

	HoleReading(SystemMechanism mechanism, Gaps gaps) {
		this.mechanism = mechanism;
		this.gaps = gaps;
		mechanism.holes().forEach(this::add);
	}

	/** What can be read; all of them if they leave no gap. */
	List<Hole> holes() {
		return List.copyOf(holes);
	}

	/** The keys whose rise is {@link SystemSound#USUAL_RISE} for want of a better one. */
	List<String> assumedRises() {
		return List.copyOf(assumedRises);
	}

	/** The holes that are undercut, which the model does not know. */
	List<String> undercut() {
		return List.copyOf(undercut);
	}

	private void add(SystemHole hole) {
		Optional<EffectiveHole> own = mechanism.definition(hole);
		List<EffectiveKey> keys = mechanism.keysOver(hole);
		EObject element = own.<EObject>map(EffectiveHole::definition).orElseGet(() -> keys.get(0).definition());
		Optional<Length> diameter = gaps.need(said(own, keys, EffectiveHole::diameter, EffectiveKey::holeDiameter),
				element, Advice.of("sound-size.hole", hole.name()));
		Optional<Length> chimney = gaps.need(said(own, keys, EffectiveHole::chimney, EffectiveKey::chimney), element,
				Advice.of("sound-size.chimney", hole.name()));
		if (hole.at().isEmpty()) {
			gaps.tell(element, Advice.of("sound-size.place", hole.name()));
		}
		Length rim = said(own, keys, EffectiveHole::rimWidth, EffectiveKey::rimWidth).orElse(KeyRim.USUAL_WIDTH);
		Optional<Cup> cup = key(keys).flatMap(this::cup);
		said(own, keys, EffectiveHole::undercut, EffectiveKey::undercut)
				.ifPresent(some -> undercut.add(hole.name()));
		if (Stream.of(diameter, chimney, hole.at()).allMatch(Optional::isPresent)) {
			Hole open = Hole.of(hole.name(), hole.at().get(), diameter.get(), chimney.get(), rim);
			holes.add(cup.map(open::under).orElse(open));
		}
	}

	private static Optional<Length> said(Optional<EffectiveHole> own, List<EffectiveKey> keys,
			Function<EffectiveHole, Optional<Length>> ofHole, Function<EffectiveKey, Optional<Length>> ofKey) {
		Stream<Optional<Length>> said = own.isPresent() ? own.map(ofHole).stream() : keys.stream().map(ofKey);
		return said.map(HoleReading::positive).flatMap(Optional::stream).findFirst();
	}

	/** A size of nothing is as good as none; other checks say that it cannot be. */
	private static Optional<Length> positive(Optional<Length> size) {
		return size.filter(length -> length.signum() > 0);
	}

	/** Of several keys over one hole a perforated one, through which it may sound when another is down. */
	static Optional<EffectiveKey> key(List<EffectiveKey> keys) {
		return keys.stream().filter(HoleReading::isPerforated).findFirst().or(() -> keys.stream().findFirst());
	}

	private static boolean isPerforated(EffectiveKey key) {
		return key.cupStyle().filter(CupStyle.PERFORATED::equals).isPresent();
	}

	private Optional<Cup> cup(EffectiveKey key) {
		Optional<Length> diameter = gaps.need(positive(key.cupDiameter()), key.definition(),
				Advice.of("sound-size.cup", key.name()));
		Optional<Length> rise = positive(key.rise().or(() -> key.whole().flatMap(EffectiveKey::rise)));
		if (rise.isEmpty()) {
			assumedRises.add(key.name());
		}
		Length high = rise.orElse(SystemSound.USUAL_RISE);
		if (!isPerforated(key)) {
			return diameter.map(wide -> Cup.plain(wide, high));
		}
		Optional<Length> opening = gaps.need(positive(key.perforation()), key.definition(),
				Advice.of("sound-size.perforation", key.name()));
		return diameter.flatMap(wide -> opening
				.map(through -> Cup.perforated(wide, high, through, positive(key.cupDepth()).orElse(USUAL_DEPTH))));
	}
}

package padwright.workup.rules;

import static padwright.workup.rules.PropertyType.WEIGHT;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import padwright.engine.length.Length;
import padwright.engine.rim.ProfileSplit;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.keysystem.CupStyle;
import padwright.model.keysystem.HoleMake;
import padwright.model.keysystem.Posture;
import padwright.model.plan.PadState;
import padwright.model.plan.Piece;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.workup.inspection.EmptyCup;
import padwright.workup.service.KeyJob;

/** What rules can ask about a key, its hole and cup, what was found there and what is done. */
final class KeyProperties {

	private KeyProperties() {
	}

	static List<RuleProperty> all() {
		PropertyList list = new PropertyList(false);
		list.named("key", job -> job.key().map(EffectiveKey::definition));
		list.oneOf("key.posture", Posture.VALUES, job -> job.key().map(EffectiveKey::posture));
		list.named("key.joint", job -> job.key().flatMap(EffectiveKey::joint).map(EffectiveJoint::definition));
		list.length("key.play", job -> Lengths.of(job.service().getPlay(), job.service()));
		list.length("key.wear", job -> Lengths.of(job.service().getWear(), job.service()));
		list.quantity("key.spring", WEIGHT, job -> Optional.ofNullable(job.service().getSpring()));
		list.length("cup.diameter", job -> job.key().flatMap(EffectiveKey::cupDiameter));
		list.length("cup.deep", job -> job.key().flatMap(EffectiveKey::cupDepth));
		list.oneOf("cup.style", CupStyle.VALUES, job -> job.key().flatMap(EffectiveKey::cupStyle));
		list.mark("cup.found", "warped", job -> job.service().isWarped());
		list.length("hole.diameter", job -> job.key().flatMap(EffectiveKey::holeDiameter));
		list.oneOf("hole.make", HoleMake.VALUES, job -> job.key().flatMap(EffectiveKey::holeMake));
		list.length("rim.width", job -> job.key().flatMap(EffectiveKey::rimWidth));
		list.mark("rim.found", "nicked", job -> !job.service().getNicks().isEmpty());
		list.oneOf("found", PadState.VALUES,
				job -> Optional.of(job.service()).filter(row -> row.isSetFound()).map(row -> row.getFound()));
		addWork(list);
		return list.properties();
	}

	private static void addWork(PropertyList list) {
		addEmptyCup(list, "empty.height", ProfileSplit::height);
		addEmptyCup(list, "empty.tilt", split -> split.tilt().fromTightToOpen());
		addEmptyCup(list, "empty.saddle", split -> split.saddle().fromTightToOpen());
		addEmptyCup(list, "empty.spread", ProfileSplit::spread);
		list.length("stack.sum", job -> Optional.of(job.stackSum()).filter(sum -> sum.signum() > 0));
		list.count("stack.pieces", job -> job.stack().size());
		list.count("shim.pieces", job -> (int) pieces(job).count());
		list.length("shim.thick", job -> pieces(job)
				.flatMap(piece -> Lengths.of(piece.getThickness(), piece).stream()).max(Comparator.naturalOrder()));
		list.names("step", Steps.ALL, Steps::of);
	}

	private static void addEmptyCup(PropertyList list, String name, Function<ProfileSplit, Length> part) {
		list.length(name, job -> EmptyCup.split(job).map(part));
	}

	private static Stream<Piece> pieces(KeyJob job) {
		return job.service().getRounds().stream().flatMap(round -> round.getPieces().stream())
				.flatMap(piece -> Resolved.of(piece).stream());
	}
}

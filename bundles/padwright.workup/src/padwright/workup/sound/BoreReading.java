package padwright.workup.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.acoustics.BorePoint;
import padwright.engine.length.Length;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveJoint.Width;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.checks.Advice;

/**
 * The bore of a system from the upper end of its first joint to the open end, joint by joint: straight between what is
 * written, and as wide as there beyond the first and the last of it. Places are from the upper end of the main joint.
 */
final class BoreReading {

	private final EffectiveSystem system;
	private final Gaps gaps;
	private final List<BorePoint> points = new ArrayList<>();

	private BoreReading(EffectiveSystem system, Gaps gaps) {
		this.system = system;
		this.gaps = gaps;
	}

	/** What can be read; whole if it leaves no gap. */
	static List<BorePoint> of(EffectiveSystem system, Gaps gaps) {
		BoreReading reading = new BoreReading(system, gaps);
		system.joints().forEach(reading::add);
		return reading.points;
	}

	private void add(EffectiveJoint joint) {
		Optional<Length> length = gaps.need(joint.length(), joint.definition(),
				Advice.of("sound-size.length", joint.name()));
		List<Width> bore = joint.bore();
		if (bore.isEmpty()) {
			gaps.tell(joint.definition(), Advice.of("sound-size.bore", joint.name()));
		} else {
			system.upperEnd(joint).ifPresent(upper -> length.ifPresent(long_ -> add(upper, long_, bore)));
		}
	}

	private void add(Length upper, Length length, List<Width> bore) {
		add(upper, bore.get(0).diameter());
		bore.forEach(width -> width.position().ifPresent(position -> add(upper.plus(position), width.diameter())));
		add(upper.plus(length), bore.get(bore.size() - 1).diameter());
	}

	/** Of three points at one place the middle one is left out, and a point said twice. */
	private void add(Length place, Length diameter) {
		BorePoint point = BorePoint.of(place, diameter);
		int last = points.size() - 1;
		if (last >= 0 && points.get(last).equals(point)) {
			return;
		}
		if (last >= 1 && points.get(last).place() == point.place() && points.get(last - 1).place() == point.place()) {
			points.remove(last);
		}
		points.add(point);
	}

	/** The bore below a place, which must lie within it. */
	static List<BorePoint> below(List<BorePoint> bore, double place) {
		List<BorePoint> left = new ArrayList<>();
		for (int index = 1; index < bore.size(); index++) {
			BorePoint upper = bore.get(index - 1);
			BorePoint lower = bore.get(index);
			if (left.isEmpty() && lower.place() > place) {
				double share = (place - upper.place()) / (lower.place() - upper.place());
				left.add(new BorePoint(place, upper.diameter() + share * (lower.diameter() - upper.diameter())));
			}
			if (!left.isEmpty()) {
				left.add(lower);
			}
		}
		return left;
	}
}

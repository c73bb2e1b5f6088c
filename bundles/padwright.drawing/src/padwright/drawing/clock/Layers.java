package padwright.drawing.clock;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.clock.Arc;

/** Gives each arc the lowest layer where it lies over no earlier one. */
final class Layers {

	private Layers() {
	}

	/** The layer of each arc, from 0. */
	static List<Integer> of(List<Arc> arcs) {
		List<Integer> layers = new ArrayList<>();
		for (Arc arc : arcs) {
			int layer = 0;
			while (isTaken(layer, arc, arcs, layers)) {
				layer++;
			}
			layers.add(layer);
		}
		return layers;
	}

	private static boolean isTaken(int layer, Arc arc, List<Arc> arcs, List<Integer> layers) {
		for (int i = 0; i < layers.size(); i++) {
			if (layers.get(i) == layer && overlap(arcs.get(i), arc)) {
				return true;
			}
		}
		return false;
	}

	/** Whether two arcs share more than an end. */
	static boolean overlap(Arc one, Arc other) {
		return one.from().halfHoursTo(other.from()) < one.halfHours()
				|| other.from().halfHoursTo(one.from()) < other.halfHours();
	}
}

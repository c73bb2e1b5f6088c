package padwright.drawing.clock;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import padwright.engine.clock.Arc;

/** Gives each arc a layer of its own where it lies over others: short ones first, so that a long one makes way. */
final class Layers {

	private Layers() {
	}

	/** The layer of each arc, from 0. */
	static List<Integer> of(List<Arc> arcs) {
		Integer[] layers = new Integer[arcs.size()];
		IntStream.range(0, layers.length).boxed().sorted(Comparator.comparing(index -> arcs.get(index).halfHours()))
				.forEach(index -> layers[index] = lowest(index, arcs, layers));
		return List.of(layers);
	}

	private static int lowest(int index, List<Arc> arcs, Integer[] layers) {
		Set<Integer> taken = IntStream.range(0, layers.length)
				.filter(other -> layers[other] != null && overlap(arcs.get(other), arcs.get(index)))
				.mapToObj(other -> layers[other]).collect(Collectors.toSet());
		return IntStream.iterate(0, layer -> layer + 1).filter(layer -> !taken.contains(layer)).findFirst()
				.orElseThrow();
	}

	/** Whether two arcs share more than an end. */
	static boolean overlap(Arc one, Arc other) {
		return one.from().halfHoursTo(other.from()) < one.halfHours()
				|| other.from().halfHoursTo(one.from()) < other.halfHours();
	}
}

package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The air column of a flute: its bore and the holes in it, all places measured along the bore from one origin.
 *
 * @param bore from the cork, or from the upper end where there is no embouchure hole, to the open end; two points or
 *        more
 * @param mouth the embouchure hole, if it has one
 * @param holes in order from the upper end, each with its centre within the bore and below the embouchure hole, none
 *        wider than the bore
 * @param leaks in the wall of the bore, by place
 */
public record Layout(List<BorePoint> bore, Optional<Mouth> mouth, List<Hole> holes, List<LeakAt> leaks) {

	/**
	 * A leak in the wall, such as that of a joint.
	 *
	 * @param place along the bore in m
	 */
	public record LeakAt(double place, Leak leak) {
	}

	/** @throws IllegalArgumentException if parts are missing, out of order, or have one name */
	public Layout {
		bore = List.copyOf(bore);
		holes = List.copyOf(holes);
		leaks = List.copyOf(leaks);
		new LayoutCheck(bore, mouth, holes, leaks).run();
	}

	/** Without leaks. */
	public Layout(List<BorePoint> bore, Optional<Mouth> mouth, List<Hole> holes) {
		this(bore, mouth, holes, List.of());
	}

	/** Every size that pitches depend on, in m, in the order of bore, mouth and holes. */
	public Map<Dimension, Double> dimensions() {
		Map<Dimension, Double> all = new LinkedHashMap<>();
		IntStream.range(0, bore.size()).forEach(
				index -> collect(Dimension.Part.BORE, Integer.toString(index + 1), bore.get(index), all));
		mouth.ifPresent(hole -> collect(Dimension.Part.MOUTH, "", hole, all));
		holes.forEach(hole -> collect(Dimension.Part.HOLE, hole.name(), hole, all));
		return all;
	}

	private static void collect(Dimension.Part part, String name, Measured<?> measured, Map<Dimension, Double> all) {
		measured.measures().forEach(
				measure -> all.put(new Dimension(part, name, measure), measured.size(measure)));
	}

	/**
	 * The same with other sizes.
	 *
	 * @param sizes in m
	 * @throws IllegalArgumentException if there is no such dimension, or the result is no layout
	 */
	public Layout with(Map<Dimension, Double> sizes) {
		Set<Dimension> unknown = new HashSet<>(sizes.keySet());
		unknown.removeAll(dimensions().keySet());
		if (!unknown.isEmpty()) {
			throw new IllegalArgumentException("the layout has no " + unknown.iterator().next());
		}
		List<BorePoint> points = new ArrayList<>();
		IntStream.range(0, bore.size()).forEach(index -> points.add(
				changed(Dimension.Part.BORE, Integer.toString(index + 1), bore.get(index), sizes)));
		return new Layout(points, mouth.map(hole -> changed(Dimension.Part.MOUTH, "", hole, sizes)),
				holes.stream().map(hole -> changed(Dimension.Part.HOLE, hole.name(), hole, sizes)).toList(), leaks);
	}

	private static <T extends Measured<T>> T changed(Dimension.Part part, String name, T measured,
			Map<Dimension, Double> sizes) {
		T changed = measured;
		for (Measure measure : measured.measures()) {
			Double size = sizes.get(new Dimension(part, name, measure));
			changed = size == null ? changed : changed.with(measure, size);
		}
		return changed;
	}
}

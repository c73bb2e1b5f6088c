package padwright.views.scenes;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.drawing.scene.Scene;

/** What of a drawing can be touched, and the way from one to the next with the keyboard. */
public final class Targets {

	/** Off to the side counts so many times as much as ahead. */
	private static final double ASIDE = 2.5;

	private final List<Target> all;

	private Targets(List<Target> all) {
		this.all = all;
	}

	/** The named groups of a drawing, in the order in which they are drawn. */
	public static Targets of(Scene scene) {
		Map<String, Target> found = new LinkedHashMap<>();
		Extent extent = new Extent((group, bounds) -> group.ifPresent(named -> {
			String id = named.id().orElseThrow();
			found.merge(id, new Target(id, named.tooltip().orElse(id), bounds), Targets::together);
		}));
		scene.elements().forEach(element -> element.accept(extent));
		return new Targets(List.copyOf(found.values()));
	}

	private static Target together(Target one, Target other) {
		return new Target(one.id(), one.meaning(), Extent.union(one.bounds(), other.bounds()));
	}

	public List<Target> all() {
		return all;
	}

	public Optional<Target> named(String id) {
		return all.stream().filter(target -> target.id().equals(id)).findFirst();
	}

	/** The one after (or, with a step of −1, before) {@code id}; the first or last where there is no such one. */
	public Optional<Target> next(Optional<String> id, int step) {
		int index = id.flatMap(this::named).map(all::indexOf).orElse(step > 0 ? -1 : all.size());
		int next = index + step;
		return next < 0 || next >= all.size() ? Optional.empty() : Optional.of(all.get(next));
	}

	/** The nearest from {@code id} in a direction with one part that is not 0; the first if there is no such id. */
	public Optional<Target> toward(Optional<String> id, int dx, int dy) {
		Optional<Target> from = id.flatMap(this::named);
		return from.isEmpty() ? next(Optional.empty(), 1)
				: all.stream().filter(target -> ahead(from.get(), target, dx, dy) > 1e-6)
						.min(Comparator.comparingDouble(target -> ahead(from.get(), target, dx, dy)
								+ ASIDE * Math.abs(ahead(from.get(), target, dy, dx))));
	}

	private static double ahead(Target from, Target to, int dx, int dy) {
		return dx * (to.bounds().centreX() - from.bounds().centreX())
				+ dy * (to.bounds().centreY() - from.bounds().centreY());
	}
}

package padwright.engine.acoustics;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What makes a list of parts the layout of an instrument. */
record LayoutCheck(List<BorePoint> bore, Optional<Mouth> mouth, List<Hole> holes, List<Layout.LeakAt> leaks) {

	/** @throws IllegalArgumentException if it is none */
	void run() {
		checkBore();
		mouth.ifPresent(hole -> requireInside("the embouchure hole", hole.place(), from()));
		double last = mouth.map(Mouth::place).orElse(from());
		for (Hole hole : holes) {
			requireInside("hole " + hole.name(), hole.place(), last);
			last = hole.place();
		}
		leaks.forEach(leak -> requireInside("a leak", leak.place(), mouth.map(Mouth::place).orElse(from())));
		if (holes.stream().map(Hole::name).collect(Collectors.toSet()).size() < holes.size()) {
			throw new IllegalArgumentException("two holes have one name");
		}
	}

	private void checkBore() {
		if (bore.size() < 2 || !(from() < bore.get(1).place()) || !(bore.get(bore.size() - 2).place() < to())) {
			throw new IllegalArgumentException("a bore needs two points or more, with no step at its ends");
		}
		for (int index = 1; index < bore.size(); index++) {
			if (bore.get(index).place() < bore.get(index - 1).place()) {
				throw new IllegalArgumentException(
						"point " + (index + 1) + " of the bore lies above the one before it");
			}
			if (index > 1 && bore.get(index).place() == bore.get(index - 2).place()) {
				throw new IllegalArgumentException(
						"more than two points of the bore at " + bore.get(index).place() + " m");
			}
		}
	}

	private void requireInside(String what, double place, double above) {
		if (!(place > from() && place < to() && place >= above)) {
			throw new IllegalArgumentException(what + " at " + place + " m is not within the bore, from " + from()
					+ " to " + to() + " m, and below what comes before it at " + above + " m");
		}
	}

	private double from() {
		return bore.get(0).place();
	}

	private double to() {
		return bore.get(bore.size() - 1).place();
	}
}

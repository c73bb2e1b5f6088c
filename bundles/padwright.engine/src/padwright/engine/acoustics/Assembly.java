package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.hipparchus.analysis.differentiation.Gradient;

/**
 * An instrument as elements, of which only those of the holes change with a fingering.
 *
 * @param outside the air outside its embouchure hole
 * @param sections of the bore before each hole, and behind the last
 * @param spots of the holes, one fewer than sections
 * @param end of the bore
 */
record Assembly(Variables variables, HoleParts holeParts, Optional<Part> outside, List<List<Part>> sections,
		List<Spot> spots, End end) {

	/**
	 * Where a hole is.
	 *
	 * @param bore radius there
	 * @param open what it is when open, and {@code closed} when closed, as it is most of the time
	 */
	record Spot(Hole hole, Gradient bore, Part open, Part closed) {
	}

	/** @param sizes what those of the tail follow from */
	record End(Tail tail, List<Gradient> sizes) {
	}

	/** @throws IllegalArgumentException if a hole is wider than the bore */
	static Assembly of(Layout layout, SoundModel model) {
		Variables variables = Variables.of(layout);
		BoreShape shape = BoreShape.of(layout, variables);
		Optional<MouthParts> mouth = layout.mouth().map(hole -> new MouthParts(model, variables, shape, hole));
		HoleParts holeParts = new HoleParts(model, variables);
		List<Spot> spots = layout.holes().stream().map(hole -> spot(hole, shape, holeParts)).toList();
		List<List<Part>> sections = new ArrayList<>();
		Gradient from = mouth.map(MouthParts::place).orElse(shape.start());
		for (Hole hole : layout.holes()) {
			Gradient to = variables.ofHole(hole, Measure.PLACE);
			sections.add(section(from, to, shape, layout, variables));
			from = to;
		}
		sections.add(section(from, shape.end(), shape, layout, variables));
		sections.set(0, Stream.concat(mouth.stream().flatMap(parts -> parts.into().stream()), sections.get(0).stream())
				.toList());
		Gradient radius = shape.radii().get(shape.radii().size() - 1);
		return new Assembly(variables, holeParts, mouth.map(MouthParts::outside), sections, spots,
				new End(new Tail(radius.getValue(), new Ending.Open(model.boreEnd())), List.of(radius)));
	}

	private static Spot spot(Hole hole, BoreShape shape, HoleParts parts) {
		Gradient bore = shape.radiusAt(parts.variables().ofHole(hole, Measure.PLACE));
		if (hole.diameter() > 2 * bore.getValue()) {
			throw new IllegalArgumentException("hole " + hole.name() + " is wider than the bore, "
					+ 2 * bore.getValue() + " m");
		}
		return new Spot(hole, bore, parts.part(hole, bore, Cover.OPEN), parts.part(hole, bore, Cover.CLOSED));
	}

	/** The bore between two places, and the leaks in it. */
	private static List<Part> section(Gradient from, Gradient to, BoreShape shape, Layout layout, Variables variables) {
		List<Part> parts = new ArrayList<>();
		Gradient last = from;
		List<Layout.LeakAt> leaks = layout.leaks().stream()
				.filter(leak -> leak.place() >= from.getValue() && leak.place() < to.getValue())
				.sorted(Comparator.comparingDouble(Layout.LeakAt::place)).toList();
		for (Layout.LeakAt leak : leaks) {
			Gradient place = variables.constant(leak.place());
			parts.addAll(shape.between(last, place));
			parts.add(new Part(new WallLeak(leak.leak()),
					Arrays.stream(leak.leak().sizes()).mapToObj(variables::constant).toList()));
			last = place;
		}
		parts.addAll(shape.between(last, to));
		return parts;
	}

	/** All parts one behind the other, the air outside the embouchure hole first. */
	List<Part> parts(Fingering fingering) {
		List<Part> parts = new ArrayList<>();
		outside.ifPresent(parts::add);
		List<Part> covered = covered(fingering);
		for (int index = 0; index < spots.size(); index++) {
			parts.addAll(sections.get(index));
			parts.add(covered.get(index));
		}
		parts.addAll(sections.get(spots.size()));
		return parts;
	}

	/** The holes alone; an open or closed one is the same object every time. */
	List<Part> covered(Fingering fingering) {
		return spots.stream().map(spot -> covered(spot, fingering.over(spot.hole().name()))).toList();
	}

	private Part covered(Spot spot, Cover cover) {
		if (cover instanceof Cover.Free) {
			return spot.open();
		}
		return cover instanceof Cover.Shut ? spot.closed() : holeParts.part(spot.hole(), spot.bore(), cover);
	}
}

package padwright.engine.acoustics;

import java.util.List;
import java.util.stream.Stream;

import org.hipparchus.analysis.differentiation.Gradient;

/** From a hole and how it is covered to an element of the bore. */
record HoleParts(SoundModel model, Variables variables) {

	/** An ending with what its sizes follow from. */
	private record Top(Ending ending, List<Gradient> sizes) {
	}

	/**
	 * @param bore its radius at the hole
	 * @throws IllegalArgumentException if the hole cannot be covered like this
	 */
	Part part(Hole hole, Gradient bore, Cover cover) {
		Junction<Gradient> junction = new Junction<>(half(hole, Measure.DIAMETER),
				variables.ofHole(hole, Measure.CHIMNEY), bore, model.matched());
		boolean isClosed = cover instanceof Cover.Shut || cover instanceof Cover.Leaking;
		Neck<Gradient> neck = model.holes().neck(junction, isClosed);
		Top top = top(hole, cover);
		return new Part(new SideHole(model.holes(), Neck.values(neck), top.ending()),
				Stream.concat(neck.sizes().stream(), top.sizes().stream()).toList());
	}

	private Top top(Hole hole, Cover cover) {
		if (cover instanceof Cover.Leaking leak) {
			return isPerforated(hole) ? both(leaking(hole, leak), throughPad(hole, shut())) : leaking(hole, leak);
		}
		if (cover instanceof Cover.Partly finger) {
			return partly(hole, finger.share());
		}
		if (cover instanceof Cover.Shut) {
			return isPerforated(hole) ? throughPad(hole, shut()) : shut();
		}
		Top free = hole.cup().isEmpty() ? outside()
				: underPad(hole, cover instanceof Cover.Risen pad ? variables.constant(pad.rise())
						: variables.ofHole(hole, Measure.RISE));
		return isPerforated(hole) ? both(free, throughPad(hole, outside())) : free;
	}

	private static boolean isPerforated(Hole hole) {
		return hole.cup().filter(Cup::isPerforated).isPresent();
	}

	private static Top shut() {
		return new Top(new Ending.Stopped(), List.of());
	}

	private Top outside() {
		return new Top(new Ending.Open(model.holeEnd()), List.of());
	}

	private Top underPad(Hole hole, Gradient rise) {
		Gradient length = Ending.UnderPad.lengthening(half(hole, Measure.DIAMETER),
				rise, half(hole, Measure.CUP), variables.ofHole(hole, Measure.RIM));
		return new Top(new Ending.UnderPad(model.holeEnd(), length.getValue()), List.of(length));
	}

	private Top throughPad(Hole hole, Top beyond) {
		return narrowed(half(hole, Measure.OPENING), variables.ofHole(hole, Measure.DEPTH), beyond);
	}

	private Top partly(Hole hole, double share) {
		if (hole.cup().isEmpty()) {
			return underFinger(half(hole, Measure.DIAMETER), share);
		}
		if (!isPerforated(hole)) {
			throw new IllegalArgumentException("hole " + hole.name()
					+ " cannot be covered in part: the pad over it has no opening");
		}
		return throughPad(hole, underFinger(half(hole, Measure.OPENING), share));
	}

	private Top underFinger(Gradient radius, double share) {
		return share == 0 ? outside()
				: narrowed(radius.multiply(StrictMath.sqrt(1 - share)), variables.constant(0), outside());
	}

	private Top leaking(Hole hole, Cover.Leaking leak) {
		Gradient rim = variables.ofHole(hole, Measure.RIM);
		Gradient middle = half(hole, Measure.DIAMETER).add(rim.multiply(0.5));
		return new Top(new Ending.Leaking(new Leak.Rim(middle.getValue(), rim.getValue(), leak.gaps())),
				Stream.concat(Stream.of(middle, rim), leak.gaps().stream().map(variables::constant)).toList());
	}

	private static Top narrowed(Gradient opening, Gradient depth, Top beyond) {
		return new Top(new Ending.Narrowed(opening.getValue(), depth.getValue(), beyond.ending()),
				Stream.concat(Stream.of(opening, depth), beyond.sizes().stream()).toList());
	}

	private static Top both(Top first, Top second) {
		return new Top(new Ending.Both(first.ending(), second.ending()),
				Stream.concat(first.sizes().stream(), second.sizes().stream()).toList());
	}

	private Gradient half(Hole hole, Measure measure) {
		return variables.ofHole(hole, measure).multiply(0.5);
	}
}

package padwright.engine.acoustics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

import org.hipparchus.analysis.differentiation.Gradient;

/**
 * From the embouchure hole to elements: through its chimney into the bore, where one way leads to the cork and the
 * other on down the bore.
 */
record MouthParts(SoundModel model, Variables variables, BoreShape shape, Mouth mouth) {

	/** The air outside, around a lip. */
	Part outside() {
		Gradient radius = radius();
		Gradient free = radius.multiply(StrictMath.sqrt(1 - mouth.covered()));
		Ending open = new Ending.Open(model.mouthEnd());
		return mouth.covered() == 0 ? new Part(new Outside(new Tail(radius.getValue(), open)), List.of(radius))
				: new Part(new Outside(new Tail(radius.getValue(), new Ending.Narrowed(free.getValue(), 0, open))),
						List.of(radius, free, variables.constant(0)));
	}

	/** From under the lip to the bore below the hole. */
	List<Part> into() {
		return List.of(Part.cone(neck().chimney(), radius(), radius()), mass(true), toTheCork(), mass(false));
	}

	Gradient place() {
		return variables.ofMouth(mouth, Measure.PLACE);
	}

	private Part toTheCork() {
		List<Part> way = new ArrayList<>(shape.between(shape.start(), place()).stream().map(Part::turned).toList());
		way.add(mass(false));
		Collections.reverse(way);
		Gradient end = shape.radii().get(0);
		Branch branch = new Branch(way.stream().map(Part::element).toList(),
				new Tail(end.getValue(), new Ending.Stopped()));
		return new Part(branch, Stream.concat(way.stream().flatMap(part -> part.sizes().stream()), Stream.of(end))
				.toList());
	}

	private Part mass(boolean intoHole) {
		Neck<Gradient> neck = neck();
		return new Part(new JunctionMass(model.holes(), intoHole, Neck.values(neck)), neck.sizes());
	}

	private Neck<Gradient> neck() {
		return model.holes().neck(new Junction<>(radius(), chimney(), shape.radiusAt(place()), model.matched()), false);
	}

	private Gradient radius() {
		return variables.ofMouth(mouth, Measure.DIAMETER).multiply(0.5);
	}

	private Gradient chimney() {
		return variables.ofMouth(mouth, Measure.CHIMNEY);
	}
}

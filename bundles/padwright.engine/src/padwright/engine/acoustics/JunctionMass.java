package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.CalculusFieldElement;

/**
 * One of the masses where the embouchure hole, through which the instrument is seen, meets the bore.
 *
 * @param intoHole whether it is the one on the way through the hole, or half of that along the bore
 * @param neck sizes of the {@link Neck} of the hole
 */
record JunctionMass(HoleModel model, boolean intoHole, List<Double> neck) implements Element {

	JunctionMass {
		neck = List.copyOf(neck);
	}

	@Override
	public double[] sizes() {
		return neck.stream().mapToDouble(Double::doubleValue).toArray();
	}

	@Override
	public <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes) {
		Neck<T> hole = Neck.of(sizes);
		return TwoPort.series(intoHole ? model.intoHole(tone, hole) : hole.alongBore(tone).multiply(0.5));
	}
}

package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.CalculusFieldElement;

/**
 * One of the masses where the embouchure hole, through which the instrument is seen, meets the bore.
 *
 * @param intoHole whether it is the one on the way through the hole, or half of that along the bore
 */
record JunctionMass(HoleModel model, boolean matched, boolean intoHole, double radius, double chimney, double bore)
		implements Element {

	@Override
	public double[] sizes() {
		return new double[] { radius, chimney, bore };
	}

	@Override
	public <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes) {
		Junction<T> junction = new Junction<>(sizes.get(0), sizes.get(1), sizes.get(2), matched);
		return TwoPort.series(intoHole ? model.intoHole(tone, junction)
				: model.along(tone, junction, false).multiply(0.5));
	}
}

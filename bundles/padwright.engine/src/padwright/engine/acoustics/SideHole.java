package padwright.engine.acoustics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

import org.hipparchus.CalculusFieldElement;

/**
 * A hole in the side of the bore: half of what it adds along the bore, the hole branching off, the other half. Its
 * chimney is a tube with losses.
 *
 * @param radius of the hole in m, more than 0
 * @param chimney its height in m, 0 or more
 * @param bore radius of the bore there in m, more than 0
 * @param ending of the chimney
 */
record SideHole(HoleModel model, boolean matched, double radius, double chimney, double bore, Ending ending)
		implements Element {

	private static final int OWN_SIZES = 3;

	@Override
	public double[] sizes() {
		return DoubleStream.concat(DoubleStream.of(radius, chimney, bore), Arrays.stream(ending.sizes())).toArray();
	}

	@Override
	public <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes) {
		Junction<T> junction = new Junction<>(sizes.get(0), sizes.get(1), sizes.get(2), matched);
		Flow<T> top = ending.flow(tone, junction.radius(), sizes.subList(OWN_SIZES, sizes.size()));
		Flow<T> foot = tone.line(junction.radius()).over(model.chimney(junction)).before(top);
		T shunt = TwoPort.series(model.intoHole(tone, junction)).before(foot).admittance();
		T along = model.along(tone, junction, isClosed());
		T both = along.multiply(shunt);
		T diagonal = both.multiply(0.5).add(1);
		return new TwoPort<>(diagonal, both.multiply(0.25).add(1).multiply(along), shunt, diagonal);
	}

	private boolean isClosed() {
		return ending instanceof Ending.Stopped || ending instanceof Ending.Leaking;
	}
}

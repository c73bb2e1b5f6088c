package padwright.engine.acoustics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

import org.hipparchus.CalculusFieldElement;

/**
 * A hole in the side of the bore: half of what it adds along the bore, the hole branching off, the other half. Its
 * chimney is a tube with losses.
 *
 * @param neck sizes of its {@link Neck}
 * @param ending of the chimney
 */
record SideHole(HoleModel model, List<Double> neck, Ending ending) implements Element {

	SideHole {
		neck = List.copyOf(neck);
	}

	@Override
	public double[] sizes() {
		return DoubleStream.concat(neck.stream().mapToDouble(Double::doubleValue), Arrays.stream(ending.sizes()))
				.toArray();
	}

	@Override
	public <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes) {
		Neck<T> hole = Neck.of(sizes);
		Flow<T> top = ending.flow(tone, hole.radius(), sizes.subList(Neck.SIZES, sizes.size()));
		Flow<T> foot = tone.line(hole.radius()).over(hole.chimney()).before(top);
		T shunt = TwoPort.series(model.intoHole(tone, hole)).before(foot).admittance();
		T along = hole.alongBore(tone);
		T both = along.multiply(shunt);
		T diagonal = both.multiply(0.5).add(1);
		return new TwoPort<>(diagonal, both.multiply(0.25).add(1).multiply(along), shunt, diagonal);
	}
}

package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.CalculusFieldElement;

/** A leak in the wall of the bore. */
record WallLeak(Leak leak) implements Element {

	@Override
	public double[] sizes() {
		return leak.sizes();
	}

	@Override
	public <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes) {
		return TwoPort.shunt(leak.admittance(tone, sizes));
	}
}

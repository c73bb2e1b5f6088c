package padwright.engine.acoustics;

import java.util.List;

import org.hipparchus.CalculusFieldElement;

/** The air outside the embouchure hole, which swings with that inside. */
record Outside(Tail mouth) implements Element {

	@Override
	public double[] sizes() {
		return mouth.sizes();
	}

	@Override
	public <T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes) {
		return TwoPort.series(mouth.flow(tone, sizes).impedance());
	}
}

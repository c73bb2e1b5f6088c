package padwright.engine.acoustics;

import java.util.Arrays;
import java.util.List;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.complex.Complex;

/** A piece of the air in an instrument between two places of its bore. */
sealed interface Element permits Cone, Step, SideHole, Branch, JunctionMass, WallLeak, Outside {

	/** All that its transmission depends on, in m. */
	double[] sizes();

	/**
	 * Its transmission matrix.
	 *
	 * @param sizes in place of its own and in their order, with derivatives if wanted
	 */
	<T extends CalculusFieldElement<T>> TwoPort<T> twoPort(Tone<T> tone, List<T> sizes);

	default TwoPort<Complex> twoPort(Tone<Complex> tone) {
		return twoPort(tone, complex(sizes()));
	}

	static List<Complex> complex(double... sizes) {
		Complex[] numbers = new Complex[sizes.length];
		Arrays.setAll(numbers, index -> new Complex(sizes[index]));
		return List.of(numbers);
	}
}

package padwright.engine.acoustics;

import org.hipparchus.CalculusFieldElement;

/** Radiation impedance over ρ c / (π a²), from x = ka and jx; sources beside {@link Radiation}. */
sealed interface RadiationLaw {

	<T extends CalculusFieldElement<T>> T relative(T x, T jx);

	/** Ends without an impedance. */
	record None() implements RadiationLaw {
		@Override
		public <T extends CalculusFieldElement<T>> T relative(T x, T jx) {
			return x.newInstance(0);
		}
	}

	/** r x² + j l x. */
	record Low(double resistance, double length) implements RadiationLaw {
		@Override
		public <T extends CalculusFieldElement<T>> T relative(T x, T jx) {
			return x.multiply(x).multiply(resistance).add(jx.multiply(length));
		}
	}

	/** jx / (p + q jx). */
	record FirstOrder(double p, double q) implements RadiationLaw {
		@Override
		public <T extends CalculusFieldElement<T>> T relative(T x, T jx) {
			return jx.divide(jx.multiply(q).add(p));
		}
	}

	/** Reflects −(1 + n jx) / (1 + d₁ jx + d₂ (jx)²). */
	record SecondOrder(double n, double d1, double d2) implements RadiationLaw {
		@Override
		public <T extends CalculusFieldElement<T>> T relative(T x, T jx) {
			return fromReflection(Series.at(jx, 1, n).divide(Series.at(jx, 1, d1, d2)).negate());
		}
	}

	/** Reflects by quotients of series in x². */
	record Fitted(double[] amount, double[] amountBelow, double[] length, double[] lengthBelow)
			implements RadiationLaw {
		@Override
		public <T extends CalculusFieldElement<T>> T relative(T x, T jx) {
			T square = x.multiply(x);
			return reflecting(Series.at(square, amount).divide(Series.at(square, amountBelow)),
					Series.at(square, length).divide(Series.at(square, lengthBelow)), jx);
		}
	}

	/** Dalmont, Nederveen and Joly (2001). */
	record Dalmont() implements RadiationLaw {
		@Override
		public <T extends CalculusFieldElement<T>> T relative(T x, T jx) {
			T square = x.multiply(x);
			T sine = x.multiply(2).sin();
			T length = Series.at(square, 1, 0.044).divide(Series.at(square, 1, 0.19))
					.subtract(sine.multiply(sine).multiply(0.02)).multiply(0.6133);
			return reflecting(Series.at(x, 1, 0.2, -0.084).divide(Series.at(x, 1, 0.2, 0.5 - 0.084)), length, jx);
		}
	}

	/** Norris and Sheng (1989). */
	record NorrisSheng() implements RadiationLaw {
		@Override
		public <T extends CalculusFieldElement<T>> T relative(T x, T jx) {
			T scaled = x.multiply(0.77);
			T length = scaled.multiply(scaled).divide(scaled.add(1)).add(1).reciprocal().multiply(0.8216);
			return reflecting(Series.at(x, 1, 0.323, -0.077).divide(Series.at(x, 1, 0.323, 1 - 0.077)), length, jx);
		}
	}

	/** @param length end correction over the radius */
	private static <T extends CalculusFieldElement<T>> T reflecting(T amount, T length, T jx) {
		return fromReflection(jx.multiply(length).multiply(-2).exp().multiply(amount).negate());
	}

	private static <T extends CalculusFieldElement<T>> T fromReflection(T reflection) {
		return reflection.add(1).divide(reflection.negate().add(1));
	}
}

package padwright.engine.rim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import padwright.engine.length.LengthUnit;

/** The rim fit against ojAlgo, a general solver of linear and quadratic programmes. */
class RimFitAgainstGeneralSolverTest {

	/** Of the general solver, and of rounding to the nanometre where harmonics weigh most; relative. */
	private static final double ACCURACY = 1e-4;

	/**
	 * The general solver does not always end at the optimum, nor within the bounds, on a programme whose mean has no
	 * cost. So its answers are held to the bounds first, and then may not be smoother.
	 */
	@Test
	void isNeverRougherThanWhatTheGeneralSolverFinds() {
		SplittableRandom random = new SplittableRandom(60);
		int compared = 0;
		int equal = 0;
		while (compared < 300) {
			List<RimReading> readings = ReadingsForComparison.mostlyAgreeing(random);
			RimEstimate estimate = RimFit.fit(readings);
			Optional<GeneralRimSolver.Answer> general = estimate.consistent()
					? GeneralRimSolver.smoothestWithin(readings).filter(answer -> isWithin(answer, readings))
					: Optional.empty();
			if (general.isPresent()) {
				double roughness = GeneralRimSolver.roughness(estimate.profile());
				double allowed = ACCURACY * (1 + roughness);
				assertTrue(roughness <= general.get().roughness() + allowed, readings::toString);
				equal += roughness >= general.get().roughness() - allowed ? 1 : 0;
				compared++;
			}
		}
		assertTrue(equal > compared * 3 / 4, "of " + compared + " only " + equal + " were alike");
	}

	private static boolean isWithin(GeneralRimSolver.Answer answer, List<RimReading> readings) {
		StationBounds bounds = StationBounds.of(readings);
		double need = Double.NEGATIVE_INFINITY;
		double room = Double.POSITIVE_INFINITY;
		for (int station = 0; station < answer.shape().length; station++) {
			need = Math.max(need, inThou(bounds.lower()[station]) - answer.shape()[station]);
			room = Math.min(room, inThou(bounds.upper()[station]) - answer.shape()[station]);
		}
		return need <= room + 1e-6;
	}

	private static double inThou(double nanometres) {
		return nanometres / LengthUnit.THOU.nanometres();
	}

	@Test
	void missesByAsLittleAsTheGeneralSolverFindsPossible() {
		SplittableRandom random = new SplittableRandom(61);
		int compared = 0;
		while (compared < 1_000) {
			List<RimReading> readings = ReadingsForComparison.mostlyContradicting(random);
			RimEstimate estimate = RimFit.fit(readings);
			if (!estimate.consistent()) {
				double missed = estimate.contradictions().stream().mapToDouble(miss -> miss.by().inThou()).sum();

				assertEquals(GeneralRimSolver.leastMiss(readings), missed, 1e-3, readings::toString);
				compared++;
			}
		}
	}
}

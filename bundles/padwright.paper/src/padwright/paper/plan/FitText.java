package padwright.paper.plan;

import java.util.Optional;

import padwright.model.plan.Fitting;
import padwright.workup.parts.FitWords;
import padwright.workup.service.EffectiveFitting;

/** What is fitted, in words. */
final class FitText {

	private FitText() {
	}

	/** As in {@code rigid-base pad on 20 thou disc, polyester film, Shellac}. */
	static String of(Fitting fitting) {
		return FitWords.of(new EffectiveFitting(fitting, null));
	}

	/** The same for a key's own fitting; empty where it has none. */
	static String of(Optional<Fitting> own) {
		return own.map(FitText::of).orElse("");
	}
}

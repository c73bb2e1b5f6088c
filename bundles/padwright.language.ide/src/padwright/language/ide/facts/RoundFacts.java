package padwright.language.ide.facts;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.rim.ProfileSplit;
import padwright.engine.rim.ProfileWords;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.PadStiffness;
import padwright.workup.solve.RoundEffect;

/** What the readings of a round say about a rim, in the words of the bench. */
public final class RoundFacts {

	private RoundFacts() {
	}

	/** The profile in parts, what can cure it, and what the pieces noted are predicted to leave. */
	public static List<String> of(KeyJob job, Round round) {
		return RoundEffect.of(job, round).map(effect -> of(job, effect)).orElse(List.of());
	}

	private static List<String> of(KeyJob job, RoundEffect effect) {
		ProfileSplit split = ProfileSplit.of(effect.rim().profile());
		List<String> lines = new ArrayList<>();
		lines.add("Spread " + spread(effect));
		lines.add("Felt: " + ProfileWords.of(split));
		lines.add("Cure: " + ProfileWords.ofCure(split));
		effect.rim().contradictions().forEach(wrong -> lines.add("The reading at " + wrong.reading().hour() + " is "
				+ Figures.thou(wrong.by()) + " off what the others allow: feel it again"));
		effect.after().ifPresent(left -> lines.add("A model, with stiffness "
				+ PadStiffness.of(job).stiffness().lambda() + (PadStiffness.of(job).assumed() ? " assumed" : "")
				+ ": the feeler decides"));
		return lines;
	}

	/** For example {@code 1.2 thou}, or {@code 1.2 → 0.4 thou} where pieces are noted. */
	public static String spread(RoundEffect effect) {
		return effect.after().map(left -> Figures.number(effect.before()) + " → " + Figures.thou(left))
				.orElseGet(() -> Figures.thou(effect.before()));
	}
}

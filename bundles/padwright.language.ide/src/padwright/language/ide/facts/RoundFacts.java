package padwright.language.ide.facts;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.rim.ProfileSplit;
import padwright.language.ide.words.Messages;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.PadStiffness;
import padwright.workup.solve.RoundEffect;
import padwright.workup.words.ProfileWords;

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
		lines.add(Messages.of("round.spread", spread(effect)));
		lines.add(Messages.of("round.felt", ProfileWords.of(split)));
		lines.add(Messages.of("round.cure", ProfileWords.ofCure(split)));
		effect.rim().contradictions().forEach(wrong -> lines.add(
				Messages.of("round.contradiction", wrong.reading().hour(), Figures.thou(wrong.by()))));
		effect.after().ifPresent(left -> lines.add(model(PadStiffness.of(job))));
		return lines;
	}

	private static String model(PadStiffness pad) {
		return pad.assumed() ? Messages.of("round.assumedModel", pad.stiffness().lambda())
				: Messages.of("round.model", pad.stiffness().lambda());
	}

	/** For example {@code 1.2 thou}, or {@code 1.2 → 0.4 thou} where pieces are noted. */
	public static String spread(RoundEffect effect) {
		return effect.after().map(left -> Figures.number(effect.before()) + " → " + Figures.thou(left))
				.orElseGet(() -> Figures.thou(effect.before()));
	}
}

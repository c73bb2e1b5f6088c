package padwright.language.ide.facts;

import java.util.ArrayList;
import java.util.List;

import padwright.engine.clock.ClockHour;
import padwright.language.ide.words.Messages;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.PadGap;
import padwright.workup.solve.PadStiffness;
import padwright.workup.solve.RoundEffect;
import padwright.workup.solve.SeatWords;
import padwright.workup.words.Chance;
import padwright.workup.words.GapWords;

/** What the rounds up to one say about the gap under a pad, in the words of the bench. */
public final class RoundFacts {

	private RoundFacts() {
	}

	/** How likely the pad is level, how wide its gap is, and what was done is expected to leave. */
	public static List<String> of(KeyJob job, Round round) {
		return RoundEffect.of(job, round).map(effect -> of(job, effect)).orElse(List.of());
	}

	private static List<String> of(KeyJob job, RoundEffect effect) {
		List<String> lines = new ArrayList<>();
		lines.add(gap("round.felt", effect.felt()));
		effect.after().ifPresent(left -> lines.add(gap("round.after", left)));
		effect.felt().doubted().forEach(doubt -> lines.add(SeatWords.doubted(doubt)));
		effect.after().ifPresent(left -> lines.add(model(PadStiffness.of(job))));
		return lines;
	}

	private static String gap(String message, PadGap gap) {
		ClockHour hour = gap.widest();
		return Messages.of(message, Chance.of(gap.chance()), hour, GapWords.range(gap.band(), hour));
	}

	private static String model(PadStiffness pad) {
		return pad.assumed() ? Messages.of("round.assumedModel", pad.stiffness().lambda())
				: Messages.of("round.model", pad.stiffness().lambda());
	}

	/** For example {@code 40 %}, or {@code 40 → 75 %} where something was done. */
	public static String chance(RoundEffect effect) {
		return effect.after().map(left -> Chance.of(effect.felt().chance()) + " → " + Chance.of(left.chance()))
				.orElseGet(() -> Chance.of(effect.felt().chance()));
	}
}

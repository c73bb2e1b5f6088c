package padwright.workbench.wizards;

import java.util.List;
import java.util.Optional;

import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.PadBelief;
import padwright.workup.solve.PlacedPieces;
import padwright.workup.solve.RoundEffect;

/** Which keys are likely to be felt in the next round. */
final class DueKeys {

	private DueKeys() {
	}

	/** Those that {@link #isDue} says; all where nothing was felt yet. */
	static List<KeyJob> of(List<KeyJob> rows) {
		boolean first = rows.stream().allMatch(row -> row.lastRound().isEmpty());
		return first ? List.copyOf(rows) : rows.stream().filter(DueKeys::isDue).toList();
	}

	/** Whether something was done after the last round, or it does not make it likely enough that the pad is level. */
	static boolean isDue(KeyJob row) {
		return row.lastRound().filter(round -> PlacedPieces.isAnswered(round)
				|| chance(row, round).filter(level -> level < PadBelief.prices(row).bar()).isPresent()).isPresent();
	}

	private static Optional<Double> chance(KeyJob row, Round round) {
		return RoundEffect.of(row, round).map(effect -> effect.felt().chance());
	}

	/** How likely a row's pad is level by its last round. */
	static Optional<Double> lastChance(KeyJob row) {
		return row.lastRound().flatMap(round -> chance(row, round));
	}
}

package padwright.workbench.wizards;

import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
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

	/** Whether shims were noted after the last round, or its spread is too wide. */
	static boolean isDue(KeyJob row) {
		return row.lastRound().filter(round -> PlacedPieces.isAnswered(round) || isTooWide(row, round)).isPresent();
	}

	private static boolean isTooWide(KeyJob row, Round round) {
		return spread(row, round).filter(felt -> felt.isLongerThan(row.plan().tolerance())).isPresent();
	}

	private static Optional<Length> spread(KeyJob row, Round round) {
		return RoundEffect.of(row, round).map(RoundEffect::before);
	}

	/** The spread of a row's last round. */
	static Optional<Length> lastSpread(KeyJob row) {
		return row.lastRound().flatMap(round -> spread(row, round));
	}
}

package padwright.views.rows;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.systems.EffectiveKey;
import padwright.views.map.KeyState;
import padwright.views.map.RowFindings;
import padwright.workup.checks.Finding;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.RoundEffect;

/**
 * A key as the table shows it.
 *
 * @param place in the plan, from 0; keys without a row come after those with one
 * @param name of the key
 * @param label as the trade calls it
 * @param job its row, if the plan has one
 * @param cup inside diameter, if known
 * @param effect what the last round tells, if it can be used
 * @param findings what checks say about the row, in words
 */
public record KeyRow(int place, String name, String label, Optional<KeyJob> job, Optional<Length> cup,
		KeyState state, Optional<RoundEffect> effect, List<String> findings) {

	public KeyRow {
		findings = List.copyOf(findings);
	}

	static KeyRow of(int place, KeyJob job, List<Finding> all) {
		List<Finding> own = RowFindings.of(job, all);
		return new KeyRow(place, job.name(), job.key().map(EffectiveKey::label).orElse(job.name()), Optional.of(job),
				job.key().flatMap(EffectiveKey::cupDiameter), KeyState.of(job, own),
				job.lastRound().flatMap(round -> RoundEffect.of(job, round)),
				own.stream().map(Finding::advice).map(advice -> advice.what().words()).distinct().toList());
	}

	static KeyRow missing(int place, EffectiveKey key) {
		return new KeyRow(place, key.name(), key.label(), Optional.empty(), key.cupDiameter(), KeyState.ABSENT,
				Optional.empty(), List.of());
	}

	/** Whether any cell says {@code text}, capitals or not. */
	boolean says(String text) {
		String sought = text.toLowerCase(Locale.ROOT);
		return name.toLowerCase(Locale.ROOT).contains(sought)
				|| List.of(KeyColumn.values()).stream()
						.anyMatch(column -> column.text(this).toLowerCase(Locale.ROOT).contains(sought));
	}
}

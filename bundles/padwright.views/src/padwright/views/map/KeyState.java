package padwright.views.map;

import java.util.List;
import java.util.Locale;

import padwright.drawing.scene.Ink;
import padwright.model.plan.Round;
import padwright.views.Messages;
import padwright.views.Palette;
import padwright.workup.checks.Finding;
import padwright.workup.checks.Severity;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.PadBelief;
import padwright.workup.solve.PlacedPieces;
import padwright.workup.solve.RoundEffect;

/** How far the work on a key is. */
public enum KeyState {

	/** A key of a system, with no plan to say how far the work is. */
	DRAWN,
	/** The plan has no row for it. */
	ABSENT,
	/** Not felt yet. */
	UNREAD,
	/** Felt, but what to do about it is not noted. */
	READ,
	/** What to do is noted. */
	SOLVED,
	/** The last readings make it likely enough that the pad is level and the full shims are noted, or it was delivered. */
	DONE,
	/** A check has a warning about its row. */
	WARNING,
	/** A check has an error in its row. */
	ERROR;

	/**
	 * The state of a row.
	 *
	 * @param findings about the row
	 */
	public static KeyState of(KeyJob job, List<Finding> findings) {
		if (has(findings, Severity.ERROR)) {
			return ERROR;
		}
		if (has(findings, Severity.WARNING)) {
			return WARNING;
		}
		return job.service().getDelivered() != null ? DONE
				: job.lastRound().map(round -> of(job, round)).orElse(UNREAD);
	}

	/**
	 * The state of a key of a system.
	 *
	 * @param findings about the key
	 */
	static KeyState of(List<Finding> findings) {
		return has(findings, Severity.ERROR) ? ERROR : has(findings, Severity.WARNING) ? WARNING : DRAWN;
	}

	private static KeyState of(KeyJob job, Round round) {
		boolean isLevel = RoundEffect.of(job, round)
				.filter(effect -> effect.felt().chance() >= PadBelief.prices(job).bar()).isPresent();
		if (isLevel && round.getPieces().isEmpty() && !job.stack().isEmpty()) {
			return DONE;
		}
		return PlacedPieces.isAnswered(round) ? SOLVED : READ;
	}

	private static boolean has(List<Finding> findings, Severity severity) {
		return findings.stream().anyMatch(finding -> finding.severity() == severity);
	}

	/** In a word or two. */
	public String inWords() {
		return Messages.of("state." + name().toLowerCase(Locale.ROOT));
	}

	/** Its colour in a theme. */
	public Ink ink(Palette palette) {
		return switch (this) {
		case DRAWN -> palette.unread();
		case ABSENT -> palette.quiet();
		case UNREAD -> palette.unread();
		case READ -> palette.read();
		case SOLVED -> palette.solved();
		case DONE -> palette.done();
		case WARNING -> palette.warning();
		case ERROR -> palette.error();
		};
	}
}

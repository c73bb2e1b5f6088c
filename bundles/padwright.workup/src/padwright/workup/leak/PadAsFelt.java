package padwright.workup.leak;

import padwright.engine.evidence.FilmInPlace;
import padwright.engine.leak.LikelyPad;
import padwright.workup.service.KeyJob;
import padwright.workup.service.KeyRim;
import padwright.workup.solve.PadEvidence;

/**
 * A pad that was felt.
 *
 * @param job its row
 * @param rim under it
 * @param evidence what its rounds tell
 */
public record PadAsFelt(KeyJob job, KeyRim rim, PadEvidence evidence) {

	/** With this film behind it. */
	LikelyPad with(FilmInPlace film) {
		return new LikelyPad(job.name(), rim.radius(), rim.width(), evidence.gaps(film));
	}

	/** As it was felt last. */
	public LikelyPad asFelt() {
		return with(evidence.film());
	}
}

package padwright.workup.choose;

import java.util.List;
import java.util.Optional;

import padwright.model.stock.Pad;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.KeyJob;

/**
 * The pads in stock for one key.
 *
 * @param candidates the best first; those that cannot go in at all are last
 */
public record KeyChoice(KeyJob job, List<Candidate> candidates) {

	public KeyChoice {
		candidates = List.copyOf(candidates);
	}

	/** The label of the key. */
	public String label() {
		return job.key().map(EffectiveKey::label).orElse(job.name());
	}

	/** What there is to say of a pad here. */
	public Optional<Candidate> of(Pad pad) {
		return candidates.stream().filter(candidate -> candidate.pad() == pad).findFirst();
	}
}

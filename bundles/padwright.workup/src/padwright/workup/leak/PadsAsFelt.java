package padwright.workup.leak;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.workup.service.KeyJob;
import padwright.workup.service.KeyRim;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PadEvidence;
import padwright.workup.words.Phrase;

/**
 * The pads of a plan as its rounds found them.
 *
 * @param pads in the order of the plan
 * @param leftOut keys with a row that cannot be told
 */
public record PadsAsFelt(List<PadAsFelt> pads, List<UnknownLeak> leftOut) {

	public PadsAsFelt {
		pads = List.copyOf(pads);
		leftOut = List.copyOf(leftOut);
	}

	/** Of two rows for one key, which a check reports, the last counts. */
	public static PadsAsFelt of(ServicePlan plan) {
		Map<String, KeyJob> jobs = new LinkedHashMap<>();
		plan.jobs().stream().filter(job -> job.key().isPresent()).forEach(job -> jobs.put(job.name(), job));
		Gathering gathering = new Gathering();
		jobs.values().forEach(gathering::add);
		return new PadsAsFelt(gathering.pads, gathering.leftOut);
	}

	/** Names of the keys whose rim width is {@link KeyRim#USUAL_WIDTH} for want of a better one. */
	public List<String> assumedWidths() {
		return pads.stream().filter(pad -> pad.rim().assumed()).map(pad -> pad.job().name()).toList();
	}

	private static final class Gathering {

		private final List<PadAsFelt> pads = new ArrayList<>();
		private final List<UnknownLeak> leftOut = new ArrayList<>();

		private void add(KeyJob job) {
			Optional<KeyRim> rim = job.key().flatMap(KeyRim::of);
			if (rim.isEmpty()) {
				leftOut.add(new UnknownLeak(job.name(), Phrase.of("leak.noHole")));
			} else if (job.lastRound().isEmpty()) {
				leftOut.add(new UnknownLeak(job.name(), Phrase.of("leak.notFelt")));
			} else {
				PadEvidence.of(job, why -> leftOut.add(new UnknownLeak(job.name(), why)))
						.ifPresent(evidence -> pads.add(new PadAsFelt(job, rim.get(), evidence)));
			}
		}
	}
}

package padwright.workup.leak;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.leak.SeatedPad;
import padwright.engine.rim.RimFit;
import padwright.engine.rim.RimProfile;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.RoundReadings;

/**
 * The pads of a plan as its last readings found them.
 *
 * @param pads in the order of the plan, with the gap as it was felt
 * @param assumedWidths names of those whose rim width is {@link KeyRim#USUAL_WIDTH} for want of a better one
 * @param leftOut keys with a row that cannot be told
 */
public record FeltPads(List<SeatedPad> pads, List<String> assumedWidths, List<LeftOut> leftOut) {

	public FeltPads {
		pads = List.copyOf(pads);
		assumedWidths = List.copyOf(assumedWidths);
		leftOut = List.copyOf(leftOut);
	}

	/** Of two rows for one key, which a check reports, the last counts. */
	public static FeltPads of(ServicePlan plan) {
		Map<String, KeyJob> jobs = new LinkedHashMap<>();
		plan.jobs().stream().filter(job -> job.key().isPresent()).forEach(job -> jobs.put(job.name(), job));
		Gathering gathering = new Gathering();
		jobs.values().forEach(gathering::add);
		return new FeltPads(gathering.pads, gathering.assumedWidths, gathering.leftOut);
	}

	private static final class Gathering {

		private final List<SeatedPad> pads = new ArrayList<>();
		private final List<String> assumedWidths = new ArrayList<>();
		private final List<LeftOut> leftOut = new ArrayList<>();

		private void add(KeyJob job) {
			Optional<KeyRim> rim = job.key().flatMap(KeyRim::of);
			if (rim.isEmpty()) {
				leftOut.add(new LeftOut(job.name(), "the key system says no hole, or none wider than its rim"));
				return;
			}
			gap(job).ifPresent(gap -> {
				pads.add(new SeatedPad(job.name(), rim.get().radius(), rim.get().width(), gap));
				if (rim.get().assumed()) {
					assumedWidths.add(job.name());
				}
			});
		}

		private Optional<RimProfile> gap(KeyJob job) {
			if (job.lastRound().isEmpty()) {
				leftOut.add(new LeftOut(job.name(), "not felt yet"));
			}
			return job.lastRound()
					.flatMap(round -> RoundReadings.of(job, round, why -> leftOut.add(new LeftOut(job.name(), why))))
					.map(readings -> RimFit.fit(readings).profile());
		}
	}
}

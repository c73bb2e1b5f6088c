package padwright.workup.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.plan.Treatment;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/**
 * A pad that was wetted, ironed or clamped and was not felt on a later day: it comes back in part over night, so that only
 * the next morning tells what stays (common practice, no source).
 *
 * @param treatment the last one of the pad; it has a date
 */
public record PadAtRest(Key key, Treatment treatment) {

	/** All such pads of a plan, in the order of its diary. */
	public static List<PadAtRest> of(ServicePlan plan) {
		List<PadAtRest> pads = new ArrayList<>();
		for (Treatment treatment : JobRecord.of(plan.plan()).all(Treatment.class)) {
			if (treatment.getDate() != null) {
				treatment.getKeys().stream().flatMap(key -> Resolved.of(key).stream()).forEach(key -> {
					pads.removeIf(pad -> pad.key() == key);
					pads.add(new PadAtRest(key, treatment));
				});
			}
		}
		return pads.stream().filter(pad -> !pad.isFeltLater(plan)).toList();
	}

	/** The first day on which it can be felt. */
	public LocalDate morning() {
		return treatment.getDate().plusDays(1);
	}

	private boolean isFeltLater(ServicePlan plan) {
		return plan.jobs().stream().filter(job -> job.service().getKey() == key).map(KeyJob::allRounds)
				.flatMap(List::stream).flatMap(round -> Optional.ofNullable(round.getDate()).stream())
				.anyMatch(day -> day.isAfter(treatment.getDate()));
	}
}

package padwright.workup.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** All work that the findings of an inspection ask for. */
public final class RecommendedWork {

	private RecommendedWork() {
	}

	/** For the instrument first, then for each key in the plan's order, then for springs and for the plan itself. */
	public static List<Recommendation> of(ServicePlan plan) {
		List<Recommendation> work = new ArrayList<>(InstrumentWork.of(plan));
		plan.jobs().forEach(job -> work.addAll(KeyWork.of(job)));
		work.addAll(SpringWork.of(plan));
		InstrumentWork.bed(plan).ifPresent(work::add);
		return List.copyOf(work);
	}

	/** As {@link #of(ServicePlan)}, without what the readings of empty cups ask for. */
	public static List<Recommendation> ofInspection(ServicePlan plan) {
		List<Recommendation> work = new ArrayList<>(InstrumentWork.of(plan));
		plan.jobs().forEach(job -> work.addAll(KeyWork.ofInspection(job)));
		work.addAll(SpringWork.of(plan));
		return List.copyOf(work);
	}

	/** For one key. */
	public static List<Recommendation> of(KeyJob job) {
		return Stream.concat(KeyWork.of(job).stream(),
				SpringWork.of(job.plan()).stream().filter(each -> each.element() == job.service())).toList();
	}
}

package padwright.workup.job;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.resource.Resource;

import padwright.model.plan.Document;
import padwright.model.plan.Plan;
import padwright.model.plan.WarrantyVisit;

/**
 * The service that a warranty makes good. It is known by its name alone, since plans of an archive are judged one by one,
 * without all others; it is found where it was read together with the plan.
 */
public final class EarlierService {

	private EarlierService() {
	}

	/** The plan of that name, among those that were read with this one. */
	public static Optional<Plan> of(WarrantyVisit visit) {
		Resource own = visit.eResource();
		Stream<Resource> read = own == null ? Stream.empty()
				: own.getResourceSet() == null ? Stream.of(own) : own.getResourceSet().getResources().stream();
		return read.flatMap(resource -> resource.getContents().stream()).filter(Document.class::isInstance)
				.flatMap(document -> ((Document) document).getPlans().stream())
				.filter(plan -> plan.getName() != null && plan.getName().equals(visit.getService())).findFirst();
	}

	/** The day on which its instrument went home, else that of the service. */
	public static Optional<LocalDate> day(WarrantyVisit visit) {
		return of(visit).flatMap(plan -> JobRecord.of(plan).delivered().or(() -> Optional.ofNullable(plan.getDate())));
	}
}

package padwright.language.ide.facts;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;

import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** From a place in a plan's text to the row around it. */
public final class Rows {

	private Rows() {
	}

	/** The row that an element is or stands in. */
	public static Optional<KeyJob> around(EObject element) {
		return Optional.ofNullable(EcoreUtil2.getContainerOfType(element, KeyService.class))
				.flatMap(row -> plan(row).flatMap(plan -> plan.jobs().stream()
						.filter(job -> job.service() == row).findFirst()));
	}

	/** The plan that an element is or stands in. */
	public static Optional<ServicePlan> plan(EObject element) {
		return Optional.ofNullable(EcoreUtil2.getContainerOfType(element, Plan.class)).map(ServicePlan::new);
	}
}

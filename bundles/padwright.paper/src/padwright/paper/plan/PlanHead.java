package padwright.paper.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.model.Present;
import padwright.model.plan.Plan;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageFact;
import padwright.workup.parts.Labels;
import padwright.workup.service.ServicePlan;

/** What all papers of a plan say of it. */
final class PlanHead {

	private PlanHead() {
	}

	static String instrument(ServicePlan plan) {
		return Present.of(plan.plan().getSystem()).map(Labels::of).orElse("");
	}

	static String serial(ServicePlan plan) {
		return Optional.ofNullable(plan.plan().getSerial()).orElse("");
	}

	/** The head of a paper called {@code title}. */
	static HeadText of(String title, ServicePlan plan, List<PageFact> facts) {
		Plan source = plan.plan();
		return HeadText.ofPlan(title, instrument(plan), serial(plan), Labels.of(source),
				Optional.ofNullable(source.getDate()), facts);
	}

	/** The document's title, as in {@code Film cutting sheet, Boehm flute A-1042}. */
	static String title(String title, ServicePlan plan) {
		return (title + ", " + instrument(plan) + " " + serial(plan)).strip();
	}

	/** Seat tolerance, default fitting and stock, as far as the plan says them. */
	static List<PageFact> facts(ServicePlan plan) {
		List<PageFact> facts = new ArrayList<>();
		Optional.ofNullable(plan.plan().getFitting())
				.ifPresent(fitting -> facts.add(new PageFact("Fit", FitText.of(fitting))));
		plan.stock().ifPresent(stock -> facts.add(new PageFact("Stock", Labels.of(stock))));
		return facts;
	}
}

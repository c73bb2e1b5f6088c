package padwright.paper.plan;

import java.util.List;

import padwright.engine.quote.Quote;
import padwright.paper.quote.QuoteSheet;
import padwright.paper.words.Messages;
import padwright.workup.cautions.Cautions;
import padwright.workup.inspection.Recommendation;
import padwright.workup.inspection.RecommendedWork;
import padwright.workup.service.ServicePlan;

/** The quote of a plan on paper. */
public final class PlanQuoteSheet {

	private PlanQuoteSheet() {
	}

	/** The quote with what an inspection found besides. */
	public static QuoteSheet of(ServicePlan plan, Quote quote) {
		String title = Messages.of("quote.title");
		List<String> work = RecommendedWork.of(plan).stream().map(Recommendation::inOneLine).toList();
		return new QuoteSheet(PlanHead.of(title, plan, PlanHead.facts(plan)), PlanHead.title(title, plan), quote, work,
				Cautions.ofMaterials(plan));
	}
}

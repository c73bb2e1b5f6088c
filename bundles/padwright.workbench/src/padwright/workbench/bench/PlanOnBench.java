package padwright.workbench.bench;

import java.util.List;
import java.util.Optional;

import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

import padwright.language.ide.facts.Plans;
import padwright.model.Resolved;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;
import padwright.model.plan.Plan;
import padwright.views.layout.Layout;
import padwright.views.map.KeyMapState;
import padwright.views.rows.KeyRows;
import padwright.workup.checks.Finding;
import padwright.workup.checks.ModelChecks;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/**
 * The plan that is being worked on.
 *
 * @param findings of all checks on the plan
 * @param map of its keys
 * @param rows of its keys, for a table
 * @param layout of its system; without anything where that is not known
 */
public record PlanOnBench(String uri, String text, ServicePlan service, List<Finding> findings, KeyMapState map,
		KeyRows rows, Layout layout) implements Workpiece {

	public PlanOnBench {
		findings = List.copyOf(findings);
	}

	/** The plan of a document that is at an offset, or else its first; nothing in a document without a plan. */
	static Optional<PlanOnBench> of(String uri, XtextResource document, int offset) {
		List<Plan> plans = Plans.in(document);
		Optional<Plan> here = plans.stream().filter(plan -> Workpiece.spans(plan, offset)).findFirst()
				.or(() -> plans.stream().findFirst());
		return here.map(plan -> {
			ServicePlan service = new ServicePlan(plan);
			List<Finding> findings = ModelChecks.check(plan);
			return new PlanOnBench(uri, document.getParseResult().getRootNode().getText(), service, findings,
					KeyMapState.of(service, findings), KeyRows.of(service, findings),
					Resolved.of(plan.getSystem()).map(SystemOnBench::layout).orElseGet(Layout::empty));
		});
	}

	@Override
	public Optional<KeySystem> keySystem() {
		return Resolved.of(service.plan().getSystem());
	}

	/** The row of a key. */
	public Optional<KeyJob> row(String key) {
		return service.jobs().stream().filter(job -> job.name().equals(key)).findFirst();
	}

	@Override
	public boolean isAt(int offset) {
		return ((Document) service.plan().eContainer()).getPlans().stream()
				.noneMatch(other -> other != service.plan() && Workpiece.spans(other, offset));
	}

	@Override
	public Optional<String> keyAt(int offset) {
		return service.jobs().stream().filter(job -> Workpiece.spans(job.service(), offset)).map(KeyJob::name)
				.findFirst();
	}

	@Override
	public Optional<Integer> offset(String key) {
		return row(key).map(job -> NodeModelUtils.findActualNodeFor(job.service()).getOffset());
	}
}

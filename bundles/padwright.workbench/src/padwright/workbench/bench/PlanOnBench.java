package padwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

import padwright.language.ide.facts.Plans;
import padwright.model.plan.Plan;
import padwright.views.map.KeyMapState;
import padwright.views.rows.KeyRows;
import padwright.workup.checks.Finding;
import padwright.workup.checks.ModelChecks;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/**
 * The plan that is being worked on, as its text was at one moment. Nothing changes it later.
 *
 * @param uri of its document, as the server knows it
 * @param text of the whole document
 * @param findings of all checks on the plan
 * @param map of its keys
 * @param rows of its keys, for a table
 */
public record PlanOnBench(String uri, String text, ServicePlan service, List<Finding> findings, KeyMapState map,
		KeyRows rows) {

	public PlanOnBench {
		findings = List.copyOf(findings);
	}

	/** The plan of a document that is at an offset, or else its first; nothing in a document without a plan. */
	static Optional<PlanOnBench> of(String uri, XtextResource document, int offset) {
		List<Plan> plans = new ArrayList<>(Plans.in(document));
		Optional<Plan> here = plans.stream().filter(plan -> contains(NodeModelUtils.findActualNodeFor(plan), offset))
				.findFirst().or(() -> plans.stream().findFirst());
		return here.map(plan -> {
			ServicePlan service = new ServicePlan(plan);
			List<Finding> findings = ModelChecks.check(plan);
			return new PlanOnBench(uri, document.getParseResult().getRootNode().getText(), service, findings,
					KeyMapState.of(service, findings), KeyRows.of(service, findings));
		});
	}

	private static boolean contains(INode node, int offset) {
		return node.getOffset() <= offset && offset <= node.getEndOffset();
	}

	/** The row of a key. */
	public Optional<KeyJob> row(String key) {
		return service.jobs().stream().filter(job -> job.name().equals(key)).findFirst();
	}

	/** The key whose row an offset in the text is in. */
	public Optional<String> keyAt(int offset) {
		return service.jobs().stream().filter(job -> contains(node(job), offset)).map(KeyJob::name).findFirst();
	}

	/** Where the row of a key begins in the text. */
	public Optional<Integer> offset(String key) {
		return row(key).map(job -> node(job).getOffset());
	}

	private static INode node(KeyJob job) {
		return NodeModelUtils.findActualNodeFor(job.service());
	}
}

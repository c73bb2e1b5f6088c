package padwright.language.ide.fixes;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;

import padwright.language.ide.words.Messages;

import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.ServicePlan;

/** Adds a row for every key that a plan leaves out, in the order of the system. */
public final class MissingRows {

	private MissingRows() {
	}

	/** Nothing where no key is left out, or the plan is not yet written to its first brace. */
	public static Optional<Fix> of(ServicePlan service) {
		List<EffectiveKey> missing = service.missingKeys();
		return missing.isEmpty() ? Optional.empty() : lastBefore(service.plan()).map(last -> Fix.of(
				Messages.of("fix.addRows", missing.size()),
				NodeText.insertAfter(last, missing.stream().map(key -> "\n\tkey " + key.name())
						.collect(Collectors.joining()))));
	}

	/** The last row, or else what stands before the regulate lines or the closing brace. */
	private static Optional<INode> lastBefore(Plan plan) {
		List<KeyService> rows = plan.getKeys();
		if (!rows.isEmpty()) {
			return Optional.of(NodeText.node(rows.get(rows.size() - 1)));
		}
		INode before = null;
		List<INode> regulations = NodeText.nodes(plan, PlanPackage.Literals.PLAN__REGULATIONS);
		int end = regulations.isEmpty() ? Integer.MAX_VALUE : regulations.get(0).getOffset();
		for (ILeafNode leaf : NodeText.node(plan).getLeafNodes()) {
			if (!leaf.isHidden() && !leaf.getText().equals("}") && leaf.getOffset() < end) {
				before = leaf;
			}
		}
		return Optional.ofNullable(before);
	}
}

package padwright.language.archive;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.IResourceDescription;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.LineAndColumn;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.Document;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;

/** The names that a file gives. */
final class GivenNames {

	private static final String BETWEEN = " ";

	private GivenNames() {
	}

	/** Those that others can have links to: kind and qualified name, the same for the same. */
	static List<String> shared(IResourceDescription file) {
		return StreamSupport.stream(file.getExportedObjects().spliterator(), false)
				.filter(given -> given.getEClass() != PlanPackage.Literals.PLAN
						&& given.getEClass() != PlanPackage.Literals.DOCUMENT)
				.map(given -> given.getEClass().getName() + BETWEEN + given.getName()).sorted().toList();
	}

	/** Whether a shared name is that of a system or stock, not of an article in one. */
	static boolean isOfWhole(String shared) {
		return shared.startsWith("KeySystem" + BETWEEN) || shared.startsWith("Stock" + BETWEEN);
	}

	/** The names of its plans, each where it is first. */
	static List<PlanName> plans(XtextResource file) {
		List<PlanName> plans = new ArrayList<>();
		Set<String> seen = new HashSet<>();
		for (EObject root : file.getContents()) {
			for (Plan plan : root instanceof Document document ? document.getPlans() : List.<Plan>of()) {
				if (plan.getName() != null && seen.add(plan.getName())) {
					plans.add(named(plan));
				}
			}
		}
		return plans;
	}

	private static PlanName named(Plan plan) {
		INode node = NodeModelUtils.findNodesForFeature(plan, KeySystemPackage.Literals.TITLED__NAME).get(0);
		LineAndColumn place = NodeModelUtils.getLineAndColumn(node, node.getOffset());
		return new PlanName(plan.getName(), place.getLine(), place.getColumn());
	}
}

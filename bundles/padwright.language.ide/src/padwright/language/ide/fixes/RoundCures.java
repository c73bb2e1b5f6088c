package padwright.language.ide.fixes;

import java.util.List;

import org.eclipse.xtext.nodemodel.INode;

import padwright.language.ide.words.Messages;
import padwright.model.FeelerReading;
import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;

/** Cures for what the rounds of a row say. */
final class RoundCures {

	private static final String GRADED = " graded";

	private RoundCures() {
	}

	/** Grades the readings of the plan, or takes a dash for a dot. */
	static List<Fix> grade(Site site) {
		Fix dot = site.replace(Messages.of("fix.changeTo", FeelerReading.DRAGS), FeelerReading.DRAGS.toString());
		Plan plan = site.nearest(Plan.class);
		List<INode> hours = plan == null ? List.of() : NodeText.nodes(plan, PlanPackage.Literals.PLAN__HOURS);
		return hours.isEmpty() ? List.of(dot)
				: List.of(Fix.of(Messages.of("fix.grade"), NodeText.insertAfter(hours.get(hours.size() - 1), GRADED)),
						dot);
	}

	/** Takes out the piece in place that was probably meant. */
	static List<Fix> takeOut(Site site) {
		return site.data().stream().limit(1).map(piece -> site.replace(Messages.of("fix.takeOut", piece), piece))
				.toList();
	}
}

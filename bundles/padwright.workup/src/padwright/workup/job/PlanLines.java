package padwright.workup.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;

import padwright.model.Resolved;
import padwright.model.keysystem.Joint;
import padwright.model.plan.Inspection;
import padwright.model.plan.JobEntry;
import padwright.model.plan.KeyService;
import padwright.workup.parts.JointWords;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Messages;
import padwright.workup.words.Terms;

/** What a plan says of an instrument in words: how pads were found, what an inspection saw, and its diary. */
public final class PlanLines {

	private PlanLines() {
	}

	/**
	 * One thing that a plan says.
	 *
	 * @param words in the language of the reader
	 * @param written as it stands in the text, or empty
	 */
	public record Line(String words, String written) {

		/** What can be looked for in it. */
		public List<String> said() {
			return List.of(words, written);
		}
	}

	/**
	 * In the order of the plan.
	 *
	 * @param written what somebody wrote for a line of the diary
	 */
	public static List<Line> of(ServicePlan plan, Function<EObject, String> written) {
		List<Line> lines = new ArrayList<>();
		Optional.ofNullable(plan.plan().getInspection()).ifPresent(seen -> addInspection(seen, lines));
		plan.jobs().forEach(job -> addFound(plan, job, lines));
		JobRecord.of(plan.plan()).all(JobEntry.class)
				.forEach(entry -> lines.add(new Line(JobWords.dated(plan, entry), written.apply(entry))));
		return lines;
	}

	private static void addInspection(Inspection seen, List<Line> lines) {
		seen.getTenons().forEach(tenon -> {
			String joint = Resolved.of(tenon.getJoint()).map(JointWords::of).orElse("");
			String name = Resolved.of(tenon.getJoint()).map(Joint::getName).orElse("");
			lines.add(new Line(Messages.of("job.tenon") + " " + joint + ": " + Terms.of(tenon.getFit()),
					"tenon " + name + " " + tenon.getFit().getLiteral()));
		});
		if (seen.isSetHeadCork()) {
			lines.add(new Line(Messages.of("job.headCork") + ": " + Terms.of(seen.getHeadCork()),
					"head cork " + seen.getHeadCork().getLiteral()));
		}
	}

	private static void addFound(ServicePlan plan, KeyJob job, List<Line> lines) {
		KeyService row = job.service();
		FactList facts = new FactList();
		if (row.isSetFound()) {
			facts.add(Messages.of("job.found", Terms.of(row.getFound())));
		}
		facts.add(row.getRemark());
		if (row.isSetFound() || row.getRemark() != null) {
			lines.add(new Line(facts.behind(Messages.of("job.pad") + " " + Labels.ofKey(plan, job.name())),
					"key " + job.name() + (row.isSetFound() ? " found " + row.getFound().getLiteral() : "")));
		}
	}
}

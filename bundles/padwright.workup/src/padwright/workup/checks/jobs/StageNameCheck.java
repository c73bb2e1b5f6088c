package padwright.workup.checks.jobs;

import java.util.List;

import padwright.model.plan.Plan;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.StageReached;
import padwright.model.stock.Process;
import padwright.model.stock.ProcessStage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;
import padwright.workup.job.JobRecord;
import padwright.workup.words.NearestName;

/** Stages are those of the process that a job follows. */
public final class StageNameCheck extends Check<Plan> {

	public StageNameCheck() {
		super(Plan.class);
	}

	@Override
	protected void check(Plan plan, Findings findings) {
		JobRecord record = JobRecord.of(plan);
		record.process().ifPresent(process -> record.all(StageReached.class)
				.forEach(stage -> check(stage, process, findings)));
	}

	private static void check(StageReached stage, Process process, Findings findings) {
		List<String> names = process.getStages().stream().map(ProcessStage::getName).toList();
		if (stage.getName() != null && !names.isEmpty() && !names.contains(stage.getName())) {
			findings.warning(IssueCodes.STAGE_UNKNOWN, Place.of(stage, PlanPackage.Literals.STAGE_REACHED__NAME),
					Advice.of(IssueCodes.STAGE_UNKNOWN, stage.getName(), process.getName(), String.join(", ", names)),
					NearestName.among(names, stage.getName()));
		}
	}
}

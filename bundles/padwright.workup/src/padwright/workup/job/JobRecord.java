package padwright.workup.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.model.Resolved;
import padwright.model.plan.Arrival;
import padwright.model.plan.Delivery;
import padwright.model.plan.Job;
import padwright.model.plan.JobEntry;
import padwright.model.plan.Plan;
import padwright.model.plan.StageReached;
import padwright.model.plan.Waiting;
import padwright.model.stock.Process;
import padwright.model.stock.ProcessStage;
import padwright.workup.parts.Labels;

/** The diary of a plan, as it is now. */
public final class JobRecord {

	private final Optional<Job> job;

	private JobRecord(Optional<Job> job) {
		this.job = job;
	}

	public static JobRecord of(Plan plan) {
		return new JobRecord(Optional.ofNullable(plan.getJob()));
	}

	/** Whether the plan has a diary at all. */
	public boolean isKept() {
		return job.isPresent();
	}

	/** All entries of a kind, in the order in which they were written. */
	public <T extends JobEntry> List<T> all(Class<T> kind) {
		return job.stream().flatMap(diary -> diary.getEntries().stream()).filter(kind::isInstance).map(kind::cast).toList();
	}

	/** The last written entry of a kind. */
	public <T extends JobEntry> Optional<T> last(Class<T> kind) {
		List<T> all = all(kind);
		return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
	}

	/** The day on which the instrument came, where that is said. */
	public Optional<LocalDate> came() {
		return last(Arrival.class).map(JobEntry::getDate);
	}

	/** Whether the instrument went home. */
	public boolean isDelivered() {
		return last(Delivery.class).isPresent();
	}

	/** The day on which it went home, where that is said. */
	public Optional<LocalDate> delivered() {
		return last(Delivery.class).map(JobEntry::getDate);
	}

	/** When it is promised, where that is said. */
	public Optional<LocalDate> due() {
		return job.map(Job::getDue);
	}

	/** The shop's way that the job follows, where it names one. */
	public Optional<Process> process() {
		return job.flatMap(diary -> Resolved.of(diary.getProcess()));
	}

	/** Names of the stages that are done. */
	public Set<String> reached() {
		return all(StageReached.class).stream().map(StageReached::getName).collect(Collectors.toSet());
	}

	/** What the plan's process calls a stage, else its name. */
	public static String label(Plan plan, StageReached stage) {
		return of(plan).process().stream().flatMap(process -> process.getStages().stream())
				.filter(each -> each.getName() != null && each.getName().equals(stage.getName())).findFirst().map(Labels::of)
				.orElse(stage.getName() == null ? "" : stage.getName());
	}

	/** The first stage of the process that is not done. */
	public Optional<ProcessStage> nextStage() {
		Set<String> reached = reached();
		return process().stream().flatMap(process -> process.getStages().stream())
				.filter(stage -> !reached.contains(stage.getName())).findFirst();
	}

	/** What the job still waits for. */
	public List<Waiting> waiting() {
		return all(Waiting.class).stream().filter(waiting -> waiting.getOver() == null).toList();
	}

	/** Who wrote last. */
	public Optional<String> hand() {
		return all(JobEntry.class).stream().map(JobEntry::getHand).filter(hand -> hand != null)
				.reduce((earlier, later) -> later);
	}
}

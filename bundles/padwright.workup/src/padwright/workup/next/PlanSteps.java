package padwright.workup.next;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import padwright.model.Present;
import padwright.model.plan.Agreement;
import padwright.model.plan.Estimate;
import padwright.model.plan.Player;
import padwright.model.plan.SecondLook;
import padwright.model.plan.StageReached;
import padwright.model.stock.ProcessStage;
import padwright.model.systems.EffectiveKey;
import padwright.workup.job.DoneAtKey;
import padwright.workup.job.JobRecord;
import padwright.workup.job.PadAtRest;
import padwright.workup.job.WaitWords;
import padwright.workup.next.NextStep.Kind;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Messages;

/** The next steps of one plan. */
final class PlanSteps {

	private final ServicePlan plan;
	private final JobRecord record;
	private final List<NextStep> steps = new ArrayList<>();

	PlanSteps(ServicePlan plan) {
		this.plan = plan;
		this.record = JobRecord.of(plan.plan());
	}

	List<NextStep> steps() {
		if (record.isDelivered()) {
			addSecondLook();
			return steps;
		}
		addWaits();
		addMornings();
		addWork();
		if (steps.isEmpty()) {
			add(Kind.DELIVER, Messages.of("next.deliver"), "", Optional.empty());
		}
		return steps;
	}

	private void addWaits() {
		record.waiting().forEach(waiting -> add(Kind.WAIT, WaitWords.of(waiting), "",
				Optional.ofNullable(waiting.getUntil())));
		if (record.last(Estimate.class).isPresent() && record.last(Agreement.class).isEmpty()) {
			add(Kind.WAIT, Messages.of("next.agree"), "", Optional.empty());
		}
	}

	/** One step for all pads of one morning. */
	private void addMornings() {
		Map<LocalDate, List<String>> mornings = PadAtRest.of(plan).stream().collect(Collectors.groupingBy(
				PadAtRest::morning, LinkedHashMap::new,
				Collectors.mapping(pad -> Labels.ofKey(plan, pad.key().getName()), Collectors.toList())));
		mornings.forEach((day, keys) -> add(Kind.MORNING, Messages.of("next.feelAgain"), String.join(", ", keys),
				Optional.of(day)));
	}

	private void addWork() {
		record.nextStage().ifPresent(stage -> add(Kind.WORK, stage(stage), "", morningAfterLast(stage)));
		keys(job -> DoneAtKey.isPadPlanned(job) && !DoneAtKey.isPadIn(job) && job.service().getRounds().isEmpty())
				.ifPresent(keys -> add(Kind.WORK, Messages.of("next.pad"), keys, Optional.empty()));
		keys(DoneAtKey::isUnanswered).ifPresent(keys -> add(Kind.WORK, Messages.of("next.level"), keys, Optional.empty()));
		keys(job -> DoneAtKey.isPadIn(job) && !DoneAtKey.isFeltAsDelivered(job) && !DoneAtKey.isUnanswered(job))
				.ifPresent(keys -> add(Kind.WORK, Messages.of("next.feel"), keys, Optional.empty()));
		String couplings = plan.plan().getRegulations().stream().filter(note -> note.getLeft() == null)
				.flatMap(note -> Present.of(note.getDriver()).stream().flatMap(driver -> Present.of(note.getDriven()).stream()
						.map(driven -> Labels.ofKey(plan, driver.getName()) + " > " + Labels.ofKey(plan, driven.getName()))))
				.collect(Collectors.joining(", "));
		if (!couplings.isEmpty()) {
			add(Kind.WORK, Messages.of("next.regulate"), couplings, Optional.empty());
		}
	}

	private static String stage(ProcessStage stage) {
		String name = stage.getMinutes() == null ? Labels.of(stage)
				: Messages.of("next.usually", Labels.of(stage), stage.getMinutes().toPlainString());
		return stage.getChecks().isEmpty() ? Messages.of("next.stage", name)
				: Messages.of("next.stageCheck", name, String.join("; ", stage.getChecks()));
	}

	/** The morning after the last stage, for a stage that has to wait for it. */
	private Optional<LocalDate> morningAfterLast(ProcessStage stage) {
		return stage.isMorning() ? record.last(StageReached.class).map(StageReached::getDate).map(day -> day.plusDays(1))
				: Optional.empty();
	}

	private void addSecondLook() {
		record.last(SecondLook.class).filter(look -> look.getDate() == null).ifPresent(look -> steps.add(
				step(Kind.SECOND_LOOK, Messages.of("next.secondLook"), "", Optional.ofNullable(look.getDue()),
						Optional.ofNullable(look.getDue()))));
	}

	private Optional<String> keys(Predicate<KeyJob> chosen) {
		return Optional.of(plan.jobs().stream().filter(chosen)
				.map(job -> job.key().map(EffectiveKey::label).orElse(job.name())).collect(Collectors.joining(", ")))
				.filter(keys -> !keys.isEmpty());
	}

	private void add(Kind kind, String what, String keys, Optional<LocalDate> from) {
		steps.add(step(kind, what, keys, from, record.due()));
	}

	private NextStep step(Kind kind, String what, String keys, Optional<LocalDate> from, Optional<LocalDate> due) {
		return new NextStep(plan.plan().getName(), instrument(), player(),
				record.last(StageReached.class).map(StageReached::getName).orElse(""), kind, what, keys, from, due,
				record.hand());
	}

	private String instrument() {
		String system = Present.of(plan.plan().getSystem()).map(Labels::of).orElse("");
		return plan.plan().getSerial() == null ? system : (system + " " + plan.plan().getSerial()).strip();
	}

	private String player() {
		return Optional.ofNullable(plan.plan().getPlayer()).map(Player::getName).orElse("");
	}
}

package padwright.workup.next;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;

import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.plan.Agreement;
import padwright.model.plan.Estimate;
import padwright.model.plan.Player;
import padwright.model.plan.Regulation;
import padwright.model.plan.SecondLook;
import padwright.model.plan.StageReached;
import padwright.model.plan.WaitReason;
import padwright.model.plan.Waiting;
import padwright.model.stock.Pad;
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
import padwright.workup.words.Phrase;

/** The next steps of one plan. */
final class PlanSteps {

	/** New felt settles in its first weeks, so that it is looked at once more after four of them; common practice, no source. */
	private static final int WEEKS_TO_SETTLE = 4;
	/** Later than that nobody is asked to come any more. */
	private static final int WEEKS_TO_ASK = 12;

	private static final String FELT = "felt";

	private final ServicePlan plan;
	private final LocalDate today;
	private final JobRecord record;
	private final List<NextStep> steps = new ArrayList<>();

	PlanSteps(ServicePlan plan, LocalDate today) {
		this.plan = plan;
		this.today = today;
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
			add(Kind.DELIVER, job(), Phrase.of("next.deliver"), "", Optional.empty());
		}
		return steps;
	}

	/** The diary, or the plan itself where there is none. */
	private EObject job() {
		return plan.plan().getJob() == null ? plan.plan() : plan.plan().getJob();
	}

	private void addWaits() {
		if (isEstimateOpen()) {
			record.last(Estimate.class).ifPresent(estimate -> add(Kind.AGREE, estimate, Phrase.of("next.agree"), "",
					Optional.empty()));
		}
		record.waiting().forEach(waiting -> add(isFor(waiting, WaitReason.ESTIMATE) ? Kind.AGREE : Kind.WAIT, waiting,
				WaitWords.phrase(waiting), "", Optional.ofNullable(waiting.getUntil())));
	}

	private boolean isEstimateOpen() {
		return record.last(Estimate.class).isPresent() && record.last(Agreement.class).isEmpty();
	}

	private static boolean isFor(Waiting waiting, WaitReason reason) {
		return waiting.getReason() == reason;
	}

	/** Without an answer nothing is begun. */
	private Optional<Kind> heldByAnswer() {
		return isEstimateOpen() || record.waiting().stream().anyMatch(waiting -> isFor(waiting, WaitReason.ESTIMATE))
				? Optional.of(Kind.AGREE) : Optional.empty();
	}

	/** Without parts no pad is fitted, but other work goes on. */
	private Optional<Kind> heldByParts() {
		return heldByAnswer().or(() -> record.waiting().stream().filter(waiting -> isFor(waiting, WaitReason.PARTS))
				.findFirst().map(waiting -> Kind.WAIT));
	}

	/** One step for all pads of one morning. */
	private void addMornings() {
		Map<LocalDate, List<PadAtRest>> mornings = PadAtRest.of(plan).stream()
				.collect(Collectors.groupingBy(PadAtRest::morning, LinkedHashMap::new, Collectors.toList()));
		mornings.forEach((day, pads) -> add(Kind.MORNING, pads.get(0).treatment(), Phrase.of("next.feelAgain"),
				pads.stream().map(pad -> Labels.ofKey(plan, pad.key().getName())).collect(Collectors.joining(", ")),
				Optional.of(day)));
	}

	private void addWork() {
		record.nextStage().ifPresent(stage -> steps.add(step(Kind.WORK, heldByAnswer(), lastReached(), stage(stage), "",
				morningAfterLast(stage), record.due())));
		addWork(job -> DoneAtKey.isPadPlanned(job) && !DoneAtKey.isPadIn(job) && job.service().getRounds().isEmpty(),
				heldByParts(), Phrase.of("next.pad"));
		Set<Key> resting = PadAtRest.of(plan).stream().map(PadAtRest::key).collect(Collectors.toSet());
		addWork(job -> !resting.contains(job.service().getKey()) && DoneAtKey.isUnanswered(job), heldByAnswer(),
				Phrase.of("next.level"));
		Predicate<KeyJob> toFeel = job -> DoneAtKey.isPadIn(job) && !DoneAtKey.isFeltAsDelivered(job)
				&& !DoneAtKey.isUnanswered(job) && !resting.contains(job.service().getKey());
		addWork(toFeel.and(job -> job.allRounds().isEmpty()), heldByAnswer(), Phrase.of("next.feelFirst"));
		addWork(toFeel.and(job -> !job.allRounds().isEmpty()), heldByAnswer(), Phrase.of("next.feel"));
		List<Regulation> open = plan.plan().getRegulations().stream().filter(note -> note.getLeft() == null).toList();
		String couplings = open.stream().flatMap(note -> Resolved.of(note.getDriver()).stream()
				.flatMap(driver -> Resolved.of(note.getDriven()).stream()
						.map(driven -> Labels.ofKey(plan, driver.getName()) + " > " + Labels.ofKey(plan, driven.getName()))))
				.collect(Collectors.joining(", "));
		if (!couplings.isEmpty()) {
			steps.add(step(Kind.WORK, heldByAnswer(), open.get(0), Phrase.of("next.regulate"), couplings,
					Optional.empty(), record.due()));
		}
	}

	/** One step for all keys that need it. */
	private void addWork(Predicate<KeyJob> chosen, Optional<Kind> heldBy, Phrase what) {
		List<KeyJob> jobs = plan.jobs().stream().filter(chosen).toList();
		if (!jobs.isEmpty()) {
			steps.add(step(Kind.WORK, heldBy, jobs.get(0).service(), what, labels(jobs), Optional.empty(), record.due()));
		}
	}

	private EObject lastReached() {
		return record.last(StageReached.class).map(EObject.class::cast).orElseGet(this::job);
	}

	private static Phrase stage(ProcessStage stage) {
		Phrase name = stage.getMinutes() == null ? Phrase.plain(Labels.of(stage))
				: Phrase.of("next.usually", Labels.of(stage), stage.getMinutes().toPlainString(), stage.getMinutes());
		return stage.getChecks().isEmpty() ? Phrase.of("next.stage", name)
				: Phrase.of("next.stageCheck", name, String.join("; ", stage.getChecks()));
	}

	/** The morning after the last stage, for a stage that has to wait for it. */
	private Optional<LocalDate> morningAfterLast(ProcessStage stage) {
		return stage.isMorning() ? record.last(StageReached.class).map(StageReached::getDate).map(day -> day.plusDays(1))
				: Optional.empty();
	}

	private void addSecondLook() {
		Optional<SecondLook> look = record.last(SecondLook.class);
		look.filter(noted -> noted.getDate() == null).ifPresent(noted -> addSecondLook(noted,
				Phrase.of("next.secondLook"), "", Optional.ofNullable(noted.getDue()), Optional.ofNullable(noted.getDue())));
		Optional<LocalDate> home = record.delivered();
		List<KeyJob> felt = plan.jobs().stream().filter(job -> DoneAtKey.isPadIn(job)
				&& job.fitting().pad().filter(PlanSteps::isFelt).isPresent()).toList();
		if (look.isEmpty() && !felt.isEmpty()
				&& home.filter(day -> !day.plusWeeks(WEEKS_TO_ASK).isBefore(today)).isPresent()) {
			addSecondLook(job(), Phrase.of("next.secondLookFelt"), labels(felt), home.map(day -> day.plusWeeks(WEEKS_TO_SETTLE)),
					Optional.empty());
		}
	}

	private void addSecondLook(EObject element, Phrase what, String keys, Optional<LocalDate> from, Optional<LocalDate> due) {
		steps.add(step(Kind.SECOND_LOOK, Optional.empty(), element, what, keys, from, due));
	}

	private static boolean isFelt(Pad pad) {
		return pad.getLayers().stream().flatMap(layer -> Resolved.of(layer.getMaterial()).stream())
				.anyMatch(material -> FELT.equals(material.getName()));
	}

	private static String labels(List<KeyJob> jobs) {
		return jobs.stream().map(job -> job.key().map(EffectiveKey::label).orElse(job.name()))
				.collect(Collectors.joining(", "));
	}

	private void add(Kind kind, EObject element, Phrase what, String keys, Optional<LocalDate> from) {
		steps.add(step(kind, Optional.empty(), element, what, keys, from, record.due()));
	}

	private NextStep step(Kind kind, Optional<Kind> heldBy, EObject element, Phrase what, String keys,
			Optional<LocalDate> from, Optional<LocalDate> due) {
		return new NextStep(element, plan.plan().getName(), instrument(), player(),
				record.last(StageReached.class).map(stage -> JobRecord.label(plan.plan(), stage)).orElse(""), kind, heldBy, what, keys, from, due,
				record.hand());
	}

	private String instrument() {
		String system = Resolved.of(plan.plan().getSystem()).map(Labels::of).orElse("");
		return plan.plan().getSerial() == null ? system : (system + " " + plan.plan().getSerial()).strip();
	}

	private String player() {
		return Optional.ofNullable(plan.plan().getPlayer()).map(Player::getName).orElse("");
	}
}

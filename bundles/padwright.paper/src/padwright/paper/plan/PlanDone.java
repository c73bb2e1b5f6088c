package padwright.paper.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.plan.BumperNote;
import padwright.model.plan.HeadCorkNote;
import padwright.model.plan.JobEntry;
import padwright.model.plan.MechanismNote;
import padwright.model.plan.Phase;
import padwright.model.plan.PlayTest;
import padwright.model.plan.PlayVerdict;
import padwright.model.plan.Regulation;
import padwright.model.plan.SpringNote;
import padwright.model.plan.TenonNote;
import padwright.model.plan.TenonWork;
import padwright.model.plan.WarrantyVisit;
import padwright.model.stock.ProcessStage;
import padwright.paper.words.Messages;
import padwright.workup.job.DoneAtKey;
import padwright.workup.job.EarlierService;
import padwright.workup.job.JobRecord;
import padwright.workup.parts.Withdrawal;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlacedPieces;

/** What a plan says was done, in a player's words. Nothing that is only planned or found stands here as done. */
final class PlanDone {

	private final ServicePlan plan;
	private final JobRecord record;
	private final List<String> done = new ArrayList<>();

	private PlanDone(ServicePlan plan) {
		this.plan = plan;
		this.record = JobRecord.of(plan.plan());
	}

	/** At least one sentence. */
	static List<String> of(ServicePlan plan) {
		PlanDone words = new PlanDone(plan);
		words.record.last(WarrantyVisit.class).ifPresent(visit -> words.done.add(warranty(visit)));
		words.addPads();
		words.addDiary();
		words.addCouplings();
		return words.done.isEmpty() ? List.of(Messages.of("done.nothing")) : words.done;
	}

	private void addPads() {
		add(labels(DoneAtKey::isPadIn).size(), "done.pad");
		add(labels(job -> job.key().isPresent() && Withdrawal.keepsPad(job)).size(), "done.padStayed");
		add(labels(PlanDone::isLevelledAgain).size(), "done.padLevelled");
		done.addAll(PlanFound.pads(plan));
		add(labels(DoneAtKey::isFeltAsDelivered).size(),
				"done.padChecked");
	}

	private static boolean isLevelledAgain(KeyJob job) {
		return job.key().isPresent() && Withdrawal.keepsPad(job)
				&& job.service().getRounds().stream().anyMatch(round -> !PlacedPieces.of(round).isEmpty());
	}

	private void addDiary() {
		said().forEach(done::add);
		add(keys(SpringNote.class, SpringNote::isReplaced, SpringNote::getKeys), "done.spring");
		add(keys(BumperNote.class, BumperNote::isReplaced, BumperNote::getKeys), "done.bumper");
		add(record.all(MechanismNote.class).stream().filter(note -> note.getLeft() != null).count(),
				"done.play");
		record.all(TenonNote.class).stream().filter(note -> note.getWork() != null)
				.forEach(note -> done.add(tenon(note)));
		if (record.all(HeadCorkNote.class).stream().anyMatch(HeadCorkNote::isReplaced)) {
			done.add(Messages.of("done.headCork"));
		}
		addPlayed();
	}

	/** Each note as it was played last: what does not answer is said too. */
	private void addPlayed() {
		Map<String, PlayVerdict> last = new LinkedHashMap<>();
		record.all(PlayTest.class).stream().filter(test -> test.getPhase() == Phase.AFTER)
				.forEach(test -> test.getNotes().forEach(note -> last.put(note, test.getVerdict())));
		addPlayed(last, PlayVerdict.GOOD, "done.playedGood");
		addPlayed(last, PlayVerdict.WEAK, "done.playedWeak");
		addPlayed(last, PlayVerdict.SILENT, "done.playedSilent");
	}

	private void addPlayed(Map<String, PlayVerdict> last, PlayVerdict verdict, String key) {
		List<String> notes = last.keySet().stream().filter(note -> last.get(note) == verdict).toList();
		if (!notes.isEmpty()) {
			done.add(Messages.of(key, String.join(", ", notes)));
		}
	}

	private static String warranty(WarrantyVisit visit) {
		return EarlierService.day(visit).map(day -> Messages.of("done.warrantyOf", day))
				.orElseGet(() -> Messages.of("done.warranty"));
	}

	/** What the shop's process says of the stages that are done, in its order. */
	private List<String> said() {
		Set<String> reached = record.reached();
		return record.process().stream().flatMap(process -> process.getStages().stream())
				.filter(stage -> reached.contains(stage.getName())).map(ProcessStage::getSays)
				.filter(words -> words != null).toList();
	}

	private static String tenon(TenonNote note) {
		String where = Resolved.of(note.getJoint()).map(PlanFound::the)
				.orElseGet(() -> Messages.of("done.someJoint"));
		return Messages.of(note.getWork() == TenonWork.CLEANED ? "done.tenonCleaned" : "done.tenonFitted", where);
	}

	private void addCouplings() {
		List<Regulation> set = plan.plan().getRegulations().stream().filter(note -> note.getLeft() != null).toList();
		if (!set.isEmpty()) {
			boolean isTogether = set.stream().allMatch(note -> Lengths.of(note.getLeft(), note)
					.filter(left -> !left.isLongerThan(plan.tolerance())).isPresent());
			done.add(Messages.of(isTogether ? "done.together" : "done.notTogether"));
		}
	}

	private <T extends JobEntry> long keys(Class<T> kind, Predicate<T> isDone, Function<T, List<Key>> keys) {
		return record.all(kind).stream().filter(isDone).flatMap(note -> keys.apply(note).stream())
				.collect(Collectors.toCollection(LinkedHashSet::new)).size();
	}

	/** @param key of the words for {@code .one} and for {@code .more} */
	private void add(long count, String key) {
		if (count > 0) {
			done.add(Messages.of(key + (count == 1 ? ".one" : ".more"), count));
		}
	}

	private List<String> labels(Predicate<KeyJob> chosen) {
		return PlanFound.labels(plan, chosen);
	}
}

package padwright.workup.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EStructuralFeature;

import padwright.engine.clock.ClockHour;
import padwright.engine.rim.ProfileSplit;
import padwright.model.Lengths;
import padwright.model.plan.KeyService;
import padwright.model.plan.PlanPackage;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.Bed;
import padwright.workup.service.KeyJob;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;

/** What the findings at one key ask for; common practice, no source. */
final class KeyWork {

	private final KeyJob job;
	private final KeyService row;
	private final String label;
	private final List<Recommendation> work = new ArrayList<>();

	private KeyWork(KeyJob job) {
		this.job = job;
		this.row = job.service();
		this.label = job.key().map(EffectiveKey::label).orElse(job.name());
	}

	static List<Recommendation> of(KeyJob job) {
		KeyWork key = inspected(job);
		EmptyCup.split(job).ifPresent(key::addEmptyCup);
		return key.work;
	}

	/** Without what the readings of the empty cup ask for. */
	static List<Recommendation> ofInspection(KeyJob job) {
		return inspected(job).work;
	}

	private static KeyWork inspected(KeyJob job) {
		KeyWork key = new KeyWork(job);
		key.addRim();
		key.addCup();
		key.addPlay();
		return key;
	}

	private void addRim() {
		if (!row.getNicks().isEmpty()) {
			String hours = row.getNicks().stream().map(ClockHour::toString).collect(Collectors.joining(", "));
			add(PlanPackage.Literals.KEY_SERVICE__NICKS, Messages.of("work.nicks", hours),
					Messages.of("work.nicks.work"), Messages.of("work.nicks.reason"));
		}
	}

	private void addCup() {
		if (row.isWarped()) {
			add(PlanPackage.Literals.KEY_SERVICE__WARPED, Messages.of("work.warped"),
					Messages.of("work.warped.work"), Messages.of("work.warped.reason"));
		}
	}

	private void addPlay() {
		Lengths.of(row.getPlay(), row).ifPresent(play -> add(PlanPackage.Literals.KEY_SERVICE__PLAY,
				Messages.of("work.play", play), Messages.of("work.play.work"), Messages.of("work.play.reason")));
	}

	private void addEmptyCup(ProfileSplit split) {
		if (split.tilt().fromTightToOpen().isLongerThan(EmptyCup.MOST_UNEVEN)) {
			add(PlanPackage.Literals.KEY_SERVICE__EMPTY,
					Messages.of("work.leans", LengthWords.roughWithUnit(split.tilt().fromTightToOpen()), split.tilt().openHours().get(0)),
					Messages.of("work.leans.work"), Messages.of("work.leans.reason"));
		}
		if (split.saddle().fromTightToOpen().isLongerThan(EmptyCup.MOST_UNEVEN)) {
			add(PlanPackage.Literals.KEY_SERVICE__EMPTY,
					Messages.of("work.saddle", LengthWords.roughWithUnit(split.saddle().fromTightToOpen()),
							split.saddle().openHours().stream().map(ClockHour::toString)
									.reduce((some, more) -> Messages.of("words.and", some, more)).orElse("")),
					Messages.of("work.saddle.work"), Messages.of("work.saddle.reason"));
		}
		Optional<Bed> missed = job.plan().bed().filter(bed -> !bed.holds(split.height()));
		missed.ifPresent(bed -> add(PlanPackage.Literals.KEY_SERVICE__EMPTY,
				Messages.of("work.bed", LengthWords.roughWithUnit(split.height())), Messages.of("work.bed.work", bed.least(), bed.most()),
				Messages.of("work.bed.reason")));
	}

	private void add(EStructuralFeature feature, String found, String what, String reason) {
		work.add(new Recommendation(row, feature, label, found, what, reason));
	}
}

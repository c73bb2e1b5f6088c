package padwright.workup.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EStructuralFeature;

import padwright.engine.rim.ProfileSplit;
import padwright.model.Lengths;
import padwright.model.plan.KeyService;
import padwright.model.plan.PlanPackage;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.Bed;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Listed;
import padwright.workup.words.Phrase;
import padwright.workup.words.Rough;

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
			add(PlanPackage.Literals.KEY_SERVICE__NICKS, Phrase.of("work.nicks", Listed.of(row.getNicks())),
					Phrase.of("work.nicks.work"), Phrase.of("work.nicks.reason"));
		}
	}

	private void addCup() {
		if (row.isWarped()) {
			add(PlanPackage.Literals.KEY_SERVICE__WARPED, Phrase.of("work.warped"),
					Phrase.of("work.warped.work"), Phrase.of("work.warped.reason"));
		}
	}

	private void addPlay() {
		Lengths.of(row.getPlay(), row).ifPresent(play -> add(PlanPackage.Literals.KEY_SERVICE__PLAY,
				Phrase.of("work.play", play), Phrase.of("work.play.work"), Phrase.of("work.play.reason")));
	}

	private void addEmptyCup(ProfileSplit split) {
		if (split.tilt().fromTightToOpen().isLongerThan(EmptyCup.MOST_UNEVEN)) {
			add(PlanPackage.Literals.KEY_SERVICE__EMPTY,
					Phrase.of("work.leans", new Rough(split.tilt().fromTightToOpen()), split.tilt().openHours().get(0)),
					Phrase.of("work.leans.work"), Phrase.of("work.leans.reason"));
		}
		if (split.saddle().fromTightToOpen().isLongerThan(EmptyCup.MOST_UNEVEN)) {
			add(PlanPackage.Literals.KEY_SERVICE__EMPTY,
					Phrase.of("work.saddle", new Rough(split.saddle().fromTightToOpen()),
							split.saddle().openHours().stream().map(hour -> (Object) hour)
									.reduce((some, more) -> Phrase.of("words.and", some, more)).orElse("")),
					Phrase.of("work.saddle.work"), Phrase.of("work.saddle.reason"));
		}
		Optional<Bed> missed = job.plan().bed().filter(bed -> !bed.holds(split.height()));
		missed.ifPresent(bed -> add(PlanPackage.Literals.KEY_SERVICE__EMPTY,
				Phrase.of("work.bed", new Rough(split.height())), Phrase.of("work.bed.work", bed.least(), bed.most()),
				Phrase.of("work.bed.reason")));
	}

	private void add(EStructuralFeature feature, Phrase found, Phrase what, Phrase reason) {
		work.add(new Recommendation(row, feature, Phrase.plain(label), found, what, reason));
	}
}

package padwright.workup.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EStructuralFeature;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.engine.rim.ProfileSplit;
import padwright.model.Lengths;
import padwright.model.plan.KeyService;
import padwright.model.plan.PlanPackage;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.Bed;
import padwright.workup.service.KeyJob;

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
			add(PlanPackage.Literals.KEY_SERVICE__NICKS, "rim nicked at " + hours,
					"Leave the rim as it is: fit a face that gives, feel it there, and fill what is too deep for it",
					"filing down to the nick takes metal off all around, and it never comes back");
		}
	}

	private void addCup() {
		if (row.isWarped()) {
			add(PlanPackage.Literals.KEY_SERVICE__WARPED, "cup warped",
					"Press the cup true on a flat block; where it cannot be, fit a pad that follows it",
					"a flat pad on a warped cup stands hollow, and film under it would only hide that");
		}
	}

	private void addPlay() {
		Lengths.of(row.getPlay(), row).ifPresent(play -> add(PlanPackage.Literals.KEY_SERVICE__PLAY,
				"play of " + play, MechanismWords.TAKE_UP, MechanismWords.WHY_TAKE_UP));
	}

	private void addEmptyCup(ProfileSplit split) {
		if (split.tilt().fromTightToOpen().isLongerThan(EmptyCup.MOST_UNEVEN)) {
			add(PlanPackage.Literals.KEY_SERVICE__EMPTY,
					"the empty cup leans by " + thou(split.tilt().fromTightToOpen()) + ", open toward "
							+ split.tilt().openHours().get(0),
					"Bend the arm or the cup until the gap is even", "the key is bent, not the rim too high; never file it");
		}
		if (split.saddle().fromTightToOpen().isLongerThan(EmptyCup.MOST_UNEVEN)) {
			add(PlanPackage.Literals.KEY_SERVICE__EMPTY,
					"the gap of the empty cup is a saddle of " + thou(split.saddle().fromTightToOpen()) + ", open at "
							+ split.saddle().openHours().stream().map(ClockHour::toString)
									.collect(Collectors.joining(" and ")),
					"Press the cup true; what the rim keeps of it takes film",
					"no bending of the arm and no floating cures a saddle");
		}
		Optional<Bed> missed = job.plan().bed().filter(bed -> !bed.holds(split.height()));
		missed.ifPresent(bed -> add(PlanPackage.Literals.KEY_SERVICE__EMPTY,
				"the empty cup stands " + thou(split.height()) + " over the rim",
				"Set the arm so that it comes to " + bed.least() + " to " + bed.most(),
				"the full shims make up this gap, and too many or too few of them do not lie firm"));
	}

	private static String thou(Length length) {
		return length.in(LengthUnit.THOU, 1).toPlainString() + " thou";
	}

	private void add(EStructuralFeature feature, String found, String what, String reason) {
		work.add(new Recommendation(row, feature, label, found, what, reason));
	}
}

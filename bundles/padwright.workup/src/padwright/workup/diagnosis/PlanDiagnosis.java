package padwright.workup.diagnosis;

import java.util.List;
import java.util.Optional;

import padwright.engine.diagnosis.Diagnosis;
import padwright.engine.diagnosis.NextNote;
import padwright.engine.diagnosis.PadWeights;
import padwright.engine.diagnosis.TrialNotes;
import padwright.workup.service.ServicePlan;

/**
 * Which pads of a plan's instrument may leak.
 *
 * @param weights how much each pad was suspected beforehand
 * @param next the note that would tell most between the suspects, if one would
 */
public record PlanDiagnosis(ServicePlan plan, PadWeights weights, Diagnosis diagnosis, Optional<NextNote> next) {

	/**
	 * The diagnosis from notes written as {@link SystemNotes#find} reads them.
	 *
	 * @throws UnknownNoteException if the key system cannot play one
	 * @throws IllegalArgumentException if a note is reported twice, or more than 64 pads are suspect
	 */
	public static PlanDiagnosis of(ServicePlan plan, List<String> bad, List<String> good) {
		SystemNotes notes = new SystemNotes(plan);
		TrialNotes tried = new TrialNotes(bad.stream().map(notes::find).toList(),
				good.stream().map(notes::find).toList());
		PadWeights weights = LeakWeights.of(plan);
		Diagnosis diagnosis = Diagnosis.of(tried, weights);
		return new PlanDiagnosis(plan, weights, diagnosis, diagnosis.nextNote(notes.all()));
	}
}

package padwright.workup.diagnosis;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.diagnosis.Diagnosis;
import padwright.engine.diagnosis.HeardLeaks;
import padwright.engine.diagnosis.HeardSuspects;
import padwright.engine.diagnosis.NextNote;
import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.diagnosis.PadWeights;
import padwright.engine.diagnosis.SearchLimits;
import padwright.engine.diagnosis.TrialNotes;
import padwright.workup.harm.PadHearing;
import padwright.workup.service.ServicePlan;

/**
 * Which pads of a plan's instrument may leak.
 *
 * @param weights how much each pad was suspected beforehand
 * @param next the note that would tell most between the suspects, if one would
 * @param heard whether it was weighed how much each pad weakens each note; else a note that is bad has a leak among the pads
 *     that it closes, and a good one has none, wherever they are
 */
public record PlanDiagnosis(ServicePlan plan, PadWeights weights, Diagnosis diagnosis, Optional<NextNote> next,
		boolean heard) {

	/** Two leaks at once, and a third that hides behind them. */
	private static final SearchLimits HEARD = new SearchLimits(3, SearchLimits.USUAL.sets());

	/**
	 * The diagnosis from notes written as {@link SystemNotes#find} reads them.
	 *
	 * @throws UnknownNoteException if the key system cannot play one
	 * A note that was played again is named again; as bad and as good only where pads are weighed by what is heard.
	 *
	 * @throws IllegalArgumentException if a note is reported as bad and as good where logic decides, or more than 64 pads are suspect
	 */
	public static PlanDiagnosis of(ServicePlan plan, List<String> bad, List<String> good) {
		SystemNotes notes = new SystemNotes(plan);
		TrialNotes tried = new TrialNotes(bad.stream().map(notes::find).toList(),
				good.stream().map(notes::find).toList());
		return PadHearing.of(plan).filter(heard -> tellsAll(heard, tried)).map(heard -> heard(plan, notes, tried, heard))
				.orElseGet(() -> logical(plan, notes, tried));
	}

	private static boolean tellsAll(HeardLeaks heard, TrialNotes tried) {
		return Stream.concat(tried.bad().stream(), tried.good().stream()).map(NoteFingering::note)
				.allMatch(heard.weakening()::containsKey);
	}

	/** What readings tell of a pad is in the sizes that its leak may have, so no pad weighs more than another besides. */
	private static PlanDiagnosis heard(ServicePlan plan, SystemNotes notes, TrialNotes tried, HeardLeaks heard) {
		HeardSuspects suspects = HeardSuspects.of(tried, PadWeights.EVEN, heard, HEARD);
		return new PlanDiagnosis(plan, PadWeights.EVEN, suspects.diagnosis(), suspects.nextNote(notes.all()), true);
	}

	private static PlanDiagnosis logical(ServicePlan plan, SystemNotes notes, TrialNotes tried) {
		PadWeights weights = LeakWeights.of(plan);
		Diagnosis diagnosis = Diagnosis.of(tried, weights);
		return new PlanDiagnosis(plan, weights, diagnosis, diagnosis.nextNote(notes.all()), false);
	}
}

package padwright.workup.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import padwright.engine.diagnosis.Diagnosis;
import padwright.engine.diagnosis.NextNote;
import padwright.engine.diagnosis.NoteFingering;
import padwright.engine.diagnosis.PadWeights;
import padwright.engine.diagnosis.SuspectSet;
import padwright.engine.diagnosis.TrialNotes;
import padwright.model.keysystem.AdjusterKind;
import padwright.model.keysystem.Key;
import padwright.workup.DemoPlan;

class PlanDiagnosisTest {

	private final DemoPlan demo = new DemoPlan();
	private Key e;
	private Key f;
	private Key fs;

	@BeforeEach
	void system() {
		e = demo.key("E");
		f = demo.key("F");
		fs = demo.key("Fs");
		demo.couple(f, fs, demo.adjuster(AdjusterKind.CORK));
		demo.note("E4", null, e, f);
		demo.note("F4", null, f);
		demo.note("Gb4", null, fs);
	}

	@Test
	void withoutReadingsItIsTheEnginesWithEvenWeights() {
		PlanDiagnosis found = PlanDiagnosis.of(demo.service(), List.of("E4"), List.of("F#4"));
		NoteFingering low = new NoteFingering("E4", Set.of("E", "F", "Fs"));
		NoteFingering high = new NoteFingering("Gb4", Set.of("Fs"));
		assertEquals(Diagnosis.of(new TrialNotes(List.of(low), List.of(high)), PadWeights.EVEN), found.diagnosis());
		assertEquals(Optional.of("F4"), found.next().map(NextNote::note).map(NoteFingering::note));
	}

	@Test
	void openReadingsMakeAPadMoreSuspectAndNoneClearsOne() {
		demo.felt(demo.row(f), ". . 2 .");
		demo.felt(demo.row(e), ". . . .");
		PlanDiagnosis found = PlanDiagnosis.of(demo.service(), List.of("E4"), List.of("F#4"));
		assertEquals(List.of("F", "E"),
				found.diagnosis().suspects().stream().map(SuspectSet::pads).map(Set::iterator).map(pads -> pads.next())
						.toList());
		assertTrue(found.weights().of("E") > 0);
		assertEquals((found.weights().of("E") + found.weights().of("F")) / 2, found.weights().of("Fs"), 1e-9,
				"a pad that was not felt is as suspect as the others on average");
	}

	@Test
	void aNoteByTwoNamesIsReportedTwice() {
		assertThrows(IllegalArgumentException.class,
				() -> PlanDiagnosis.of(demo.service(), List.of("F#4"), List.of("Gb4")));
	}

	@Test
	void goodNotesThatClearAllContradict() {
		PlanDiagnosis found = PlanDiagnosis.of(demo.service(), List.of("F4"), List.of("E4"));
		assertEquals("F4", found.diagnosis().contradictions().get(0).note());
		assertEquals(List.of(), found.diagnosis().suspects());
	}
}

package padwright.language.harm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.acoustics.Cover;
import padwright.engine.acoustics.LeakHarm;
import padwright.engine.diagnosis.HeardLeaks;
import padwright.engine.diagnosis.SuspectSet;
import padwright.language.TestShop;
import padwright.workup.diagnosis.PlanDiagnosis;
import padwright.workup.harm.NoteHarm;
import padwright.workup.harm.PadHarm;
import padwright.workup.harm.PadHearing;
import padwright.workup.harm.PlanHarm;
import padwright.workup.report.DiagnosisReport;
import padwright.workup.service.ServicePlan;
import padwright.workup.sound.SystemSound;

/** An invented flute with four pads; a plan in which two of them slide and one drags. */
class PlanHarmTest {

	private static final String FLUTE = """
			unit mm
			system Flute {
				joint head long 150 bore 19 embouchure 12.1 by 10 chimney 5 at 100 cork 17
				joint body long 350 bore 19
				touch L1
				touch L2
				touch R1
				touch R2
				key C by L1 hole 10 chimney 2.5 cup 13 at 100
				key A by L2 hole 13 rim 0.8 chimney 2.5 cup 16.5 at 160
				key G by R1 hole 13 rim 0.8 chimney 2.5 cup 16.5 at 210
				key F by R2 hole 13 rim 0.8 chimney 2.5 cup 16.5 at 260
				note E4 : L1 L2 R1 R2
				note F4 : L1 L2 R1
				note G4 : L1 L2
				note A4 : L1
				note C5 "cross" : L1 R1 R2
			}
			""";
	private static final String STOCK = "unit thou\nstock Shelf { feeler Tape 0.5 feeler One 1 feeler Two 2 feeler Three 3 }";
	private static final String ROWS = "read at 12 3 6 9\nkey A felt . . 1 .\nkey G felt . 2 3 2\nkey F felt . . . .\nkey C";

	@Test
	void leaksHarmTheNotesThatCloseTheirPads() {
		PlanHarm harm = harm(ROWS);
		assertEquals(List.of("E4", "F4", "G4", "A4", "C5"), harm.notes());
		assertEquals(List.of("G", "A", "F"), harm.pads().stream().map(PadHarm::key).toList());
		PadHarm worst = harm.pads().get(0);
		assertEquals(List.of("E4", "F4", "C5"), worst.notes().stream().map(NoteHarm::note).toList());
		assertEquals(Optional.empty(), worst.in("G4"));
		assertEquals(List.of("C"), harm.leftOut().stream().map(left -> left.key()).toList());
		for (PadHarm pad : harm.pads()) {
			pad.notes().forEach(note -> assertTrue(note.decibels().low() <= note.decibels().expected()
					&& note.decibels().expected() <= note.decibels().high(), pad.toString()));
		}
		double sum = worst.notes().stream().mapToDouble(note -> note.decibels().expected()).sum();
		assertEquals(sum / 5, worst.mean(), 1e-12);
		assertEquals(worst.notes().stream().mapToDouble(note -> note.decibels().expected()).max().getAsDouble(),
				worst.worst(1).get(0).decibels().expected());
	}

	/** In a forked note G lies below an open hole; in the lowest note nothing is open above it. */
	@Test
	void aPadBelowTheFirstOpenHoleHarmsLess() {
		PadHarm g = harm(ROWS).pads().get(0);
		assertTrue(g.in("E4").orElseThrow().decibels().expected() > 1, g.toString());
		assertTrue(g.in("C5").orElseThrow().decibels().expected() < 0.5 * g.in("E4").orElseThrow().decibels()
				.expected(), g.toString());
	}

	@Test
	void whatIsHeardOfOneThouIsWhatTheAirColumnSays() {
		ServicePlan plan = plan(ROWS);
		SystemSound sound = SystemSound.of(plan.plan().getSystem());
		HeardLeaks heard = PadHearing.of(plan).orElseThrow();
		Cover.Leaking thou = new Cover.Leaking(Collections.nCopies(24, 25.4e-6));
		LeakHarm harm = LeakHarm.of(sound.instrument().orElseThrow(), List.of(sound.tones().get(0).note()),
				Map.of("A", List.of(thou))).get(0);
		assertEquals(harm.decibels(), 20 * Math.log10(1 + heard.weakening().get("E4").get("A")), 1e-9);
		assertTrue(heard.sizes().get("G").stream().mapToDouble(size -> size).average().getAsDouble() > 1,
				"2 and 3 thou are more than 1 all around");
	}

	/** G is cleared by logic, since C5 closes it; but nobody would hear it there. */
	@Test
	void aDiagnosisGoesByWhatIsHeard() {
		PlanDiagnosis found = PlanDiagnosis.of(plan("key C"), List.of("E4", "F4"), List.of("G4", "A4", "C5"));
		assertTrue(found.heard());
		SuspectSet first = found.diagnosis().suspects().get(0);
		assertEquals("[G]", first.pads().toString());
		assertTrue(first.share() > 0.5, found.diagnosis().suspects().toString());
		assertTrue(DiagnosisReport.of(found).leads().get(1).startsWith("Weighed by"), "the lead says how");
	}

	@Test
	void withoutABoreItIsLogicAsBefore() {
		ServicePlan plan = plan(FLUTE.replace(" bore 19", ""), "key C");
		PlanDiagnosis found = PlanDiagnosis.of(plan, List.of("E4", "F4"), List.of("G4", "A4", "C5"));
		assertEquals(Optional.empty(), PadHearing.of(plan));
		assertEquals(List.of(), found.diagnosis().suspects());
		assertEquals(2, found.diagnosis().contradictions().size());
		assertTrue(DiagnosisReport.of(found).leads().get(1).startsWith("By logic alone"), "the lead says how");
	}

	private static PlanHarm harm(String rows) {
		ServicePlan plan = plan(rows);
		return PlanHarm.of(plan, SystemSound.of(plan.plan().getSystem()));
	}

	private static ServicePlan plan(String rows) {
		return plan(FLUTE, rows);
	}

	private static ServicePlan plan(String system, String rows) {
		return new ServicePlan(new TestShop().with("a.keys", system).with("a.stock", STOCK)
				.with("b.plan", "unit thou\nplan Job for Flute with Shelf {\n" + rows + "\n}").document("b.plan").getPlans()
				.get(0));
	}
}

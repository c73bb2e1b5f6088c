package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.model.Lengths;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.LeafReading;

class ReadingEditsTest {

	private static final LeafReading DRAGS = LeafReading.DRAGS;

	static List<Path> plans() {
		return SolutionEditsTest.plans();
	}

	private static LeafReading thou(String thou) {
		return LeafReading.slides(Length.thou(thou));
	}

	private static String latest(String unit, String row, List<LeafReading> readings) {
		return EditedRow.edited(unit, row, ReadingEdits.latest(EditedRow.parse(unit, row), readings));
	}

	@Test
	void readingsThatAreTypedInTurnGrowTheRound() {
		assertEquals("key A empty 15 felt 0.5 // tight\n\tremark \"r\"",
				latest("", "key A empty 15 // tight\n\tremark \"r\"", List.of(thou("0.5"))));
		assertEquals("key A felt . 0.5 1 remark \"r\"",
				latest("", "key A felt . 0.5 remark \"r\"", List.of(DRAGS, thou("0.5"), thou("1"))));
		assertEquals("key A felt . 0.5 1 shim none",
				latest("", "key A felt . 0.5 shim none", List.of(DRAGS, thou("0.5"), thou("1"))));
	}

	@Test
	void onlyFiguresThatChangeAreWritten() {
		String row = "key A felt  .  0.50 // first\n\t 1   0.5 shim 0.5 from 2 to 4";
		assertEquals(row.replace(" 1 ", " . "),
				latest("", row, List.of(DRAGS, thou("0.5"), DRAGS, thou("0.5"))));
		assertEquals(List.of(), ReadingEdits.latest(EditedRow.parse("", row),
				List.of(DRAGS, thou("0.5"), thou("1"), thou("0.5"))));
	}

	@Test
	void readingsThatAreTakenBackLeaveTheRemarksAmongThem() {
		assertEquals("key A felt . // first\n", latest("", "key A felt . 0.5 // first\n 1", List.of(DRAGS)));
	}

	@Test
	void onlyTheLastRoundChanges() {
		assertEquals("key A felt . 1 shim 1 from 5 to 7\n\t\tfelt . .",
				latest("", "key A felt . 1 shim 1 from 5 to 7\n\t\tfelt . 0.5", List.of(DRAGS, DRAGS)));
	}

	@Test
	void anotherRoundStandsBehindTheOthers() {
		String row = "key A felt . 1 shim 1 from 5 to 7 remark \"r\"";
		assertEquals("key A felt . 1 shim 1 from 5 to 7 felt . 0.5 remark \"r\"", EditedRow.edited("", row,
				ReadingEdits.another(EditedRow.parse("", row), List.of(DRAGS, thou("0.5")))));
	}

	@Test
	void anotherRoundMayHaveHoursOfItsOwn() {
		assertEquals("key A felt . 1 felt at 1.5 4.5 : . 0.5", EditedRow.edited("", "key A felt . 1",
				ReadingEdits.another(EditedRow.parse("", "key A felt . 1"), List.of(new ClockHour(3), new ClockHour(9)),
						List.of(DRAGS, thou("0.5")))));
	}

	@Test
	void clausesStandInTheirOrderWhateverElseARowSays() {
		String before = "key A found torn nick at 3 warped play 1 thou spring 30 grams";
		assertEquals(before + " felt . delivered . . remark \"felt\"",
				latest("", before + " delivered . . remark \"felt\"", List.of(DRAGS)));
		assertEquals(before + " stack 5 felt . felt 0.5 delivered .", EditedRow.edited("",
				before + " stack 5 felt . delivered .", ReadingEdits.another(
						EditedRow.parse("", before + " stack 5 felt . delivered ."), List.of(thou("0.5")))));
		assertEquals(before + " stack 5 felt .", EditedRow.edited("", before + " felt .",
				ShimEdits.stack(EditedRow.parse("", before + " felt ."), List.of(Length.thou("5")))));
	}

	@Test
	void aLightDragIsADash() {
		assertEquals("key A felt . - 1",
				latest("", "key A felt . . 1", List.of(DRAGS, LeafReading.DRAGS_LIGHTLY, thou("1"))));
		assertEquals("key A felt . -", latest("", "key A felt - -", List.of(DRAGS, LeafReading.DRAGS_LIGHTLY)));
	}

	@Test
	void figuresAreInTheUnitOfTheirRow() {
		assertEquals("key A felt . 0.0127 mm", latest("", "key A felt . . mm", List.of(DRAGS, thou("0.5"))));
		assertEquals("key A felt . 0.0127", latest("unit mm\n", "key A felt . .", List.of(DRAGS, thou("0.5"))));
		assertEquals("key A felt 0.5 thou", latest("unit mm\n", "key A", List.of(thou("0.5"))));
		KeyService thouRow = EditedRow.parse("", "key A felt .");
		assertThrows(IllegalArgumentException.class,
				() -> ReadingEdits.latest(thouRow, List.of(LeafReading.slides(new Length(1)))));
		assertThrows(IllegalArgumentException.class, () -> ReadingEdits.latest(thouRow, List.of()));
	}

	@ParameterizedTest
	@MethodSource("plans")
	void aRowOfAnExampleReadsBackAsEdited(Path file) {
		SplittableRandom random = new SplittableRandom(4);
		String text = Examples.text(file);
		TestShop shop = Examples.with(file, text);
		List<KeyJob> jobs = new ServicePlan(shop.document(Examples.name(file)).getPlans().get(0)).jobs();
		for (int index = 0; index < jobs.size(); index += 1 + random.nextInt(4)) {
			KeyJob job = jobs.get(index);
			int hours = job.lastRound().map(job::hours).orElse(job.plan().plan().getHours()).size();
			List<LeafReading> readings = new ArrayList<>();
			for (int count = 1 + random.nextInt(hours); count > 0; count--) {
				readings.add(random.nextInt(3) == 0 ? DRAGS
						: LeafReading.slides(Length.thou("0.5").times(1 + random.nextInt(4))));
			}
			String edited = TextEdit.apply(ReadingEdits.latest(job.service(), readings), text);
			EditedRow.assertOnlyChangedIn(EditedRow.node(job.service()), text, edited);
			TestShop reread = Examples.with(file, edited);
			KeyService row = reread.document(Examples.name(file)).getPlans().get(0).getKeys().get(index);
			Round last = row.getRounds().get(row.getRounds().size() - 1);
			assertEquals(readings, LeafReading.of(last));
			job.lastRound().ifPresent(round -> {
				assertEquals(EditedRow.pieces(round), EditedRow.pieces(last));
				assertEquals(EditedRow.rest(job.service()), EditedRow.rest(row));
			});
			assertEquals(job.stack(), Lengths.of(row.getStack()));
			assertEquals(List.of(), reread.resource(Examples.name(file)).getErrors());
		}
	}
}

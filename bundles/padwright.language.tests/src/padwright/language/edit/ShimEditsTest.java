package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.engine.clock.Arc;
import padwright.engine.clock.ClockHour;
import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.model.Lengths;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.LeafReading;

class ShimEditsTest {

	static List<Path> plans() {
		return SolutionEditsTest.plans();
	}

	private static PartialShim piece(String thou, int fromHour, int halfHours) {
		return new PartialShim(new Arc(ClockHour.ofHour(fromHour), halfHours), Length.thou(thou));
	}

	private static String placed(String row, PartialShim... pieces) {
		return EditedRow.edited("", row,
				ShimEdits.pieces(EditedRow.parse("", row).getRounds().get(0), List.of(pieces)));
	}

	private static String done(String row, String full, List<PartialShim> out, List<PartialShim> pieces) {
		Round round = EditedRow.parse("", row).getRounds().get(0);
		return EditedRow.edited("", row, ShimEdits.done(round, full.startsWith("-")
				? Length.ZERO.minus(Length.thou(full.substring(1))) : Length.thou(full), out, pieces));
	}

	@Test
	void whatIsDoneStandsInTheOrderOfWork() {
		assertEquals("key A felt . 1 full +0.5 out 1 from 2 to 4 shim 0.5 from 7 to 9 remark \"r\"",
				done("key A felt . 1 remark \"r\"", "0.5", List.of(piece("1", 2, 4)), List.of(piece("0.5", 7, 4))));
		assertEquals("key A felt . 1 on 2026-03-03 full -0.5",
				done("key A felt . 1 on 2026-03-03", "-0.5", List.of(), List.of()));
		assertEquals("key A felt . 1 out 1 from 2 to 4",
				done("key A felt . 1 shim none", "0", List.of(piece("1", 2, 4)), List.of()));
		assertEquals("key A felt . 1 shim none", done("key A felt . 1", "0", List.of(), List.of()));
	}

	@Test
	void whatIsDoneTakesThePlaceOfWhatWasNoted() {
		String noted = "key A felt . 1 full +1 // more\n\tout 2 from 1 to 3 shim 0.5 from 7 to 9";
		assertEquals("key A felt . 1 shim 0.5 from 7 to 9 // more\n",
				done(noted, "0", List.of(), List.of(piece("0.5", 7, 4))));
		assertEquals(noted, done(noted, "1", List.of(piece("2", 1, 4)), List.of(piece("0.5", 7, 4))));
		assertEquals(noted.replace("from 7 to 9", "from 7 to 10"),
				done(noted, "1", List.of(piece("2", 1, 4)), List.of(piece("0.5", 7, 6))));
	}

	@Test
	void aMovedEndIsOneFigure() {
		String row = "key A felt . 1 shim 0.5 thou from 2 // a\n to 4, 1 from 8 to 10 // b";
		assertEquals(row.replace("to 4", "to 5.5"), placed(row, piece("0.5", 2, 7), piece("1", 8, 4)));
		assertEquals(row.replace("from 8", "from 7"), placed(row, piece("0.5", 2, 4), piece("1", 7, 6)));
		assertEquals(row.replace(", 1 ", ", 2 "), placed(row, piece("0.5", 2, 4), piece("2", 8, 4)));
		assertEquals(row, placed(row, piece("0.5", 2, 4), piece("1", 8, 4)));
	}

	@Test
	void droppedAndAddedPiecesKeepTheRemarks() {
		assertEquals("key A felt . 1 shim 1 from 8 to 10 // a\n",
				placed("key A felt . 1 shim 0.5 from 2 // a\n to 4, 1 from 8 to 10", piece("1", 8, 4)));
		assertEquals("key A felt . 1 shim 0.5 from 2 to 4, 1 from 8 to 10 remark \"r\"",
				placed("key A felt . 1 shim 0.5 from 2 to 4 remark \"r\"", piece("0.5", 2, 4), piece("1", 8, 4)));
		assertEquals("key A felt . 1 shim none", placed("key A felt . 1 shim 0.5 from 2 to 4"));
		assertEquals("key A felt . 1 shim 0.5 from 2 to 4", placed("key A felt . 1 shim none", piece("0.5", 2, 4)));
		assertEquals("key A felt . 1 shim none", placed("key A felt . 1 shim none"));
	}

	@Test
	void fullShimsAreReplacedAsOneClause() {
		String row = "key A empty 15 // a\n stack 7.5 // b\n 5 felt .";
		KeyService parsed = EditedRow.parse("", row);
		assertEquals("key A empty 15 // a\n stack 7.5 7.5 // b\n felt .",
				EditedRow.edited("", row, ShimEdits.stack(parsed, List.of(Length.thou("7.5"), Length.thou("7.5")))));
		assertEquals(List.of(), ShimEdits.stack(parsed, List.of(Length.thou("7.5"), Length.thou("5"))));
	}

	@ParameterizedTest
	@MethodSource("plans")
	void aRowOfAnExampleReadsBackAsEdited(Path file) {
		SplittableRandom random = new SplittableRandom(7);
		String text = Examples.text(file);
		TestShop shop = Examples.with(file, text);
		List<KeyJob> jobs = new ServicePlan(shop.document(Examples.name(file)).getPlans().get(0)).jobs();
		for (int index = 0; index < jobs.size(); index += 1 + random.nextInt(4)) {
			KeyJob job = jobs.get(index);
			if (job.lastRound().isEmpty()) {
				continue;
			}
			Round round = job.lastRound().orElseThrow();
			List<PartialShim> pieces = new ArrayList<>();
			for (int count = random.nextInt(4); count > 0; count--) {
				pieces.add(new PartialShim(new Arc(new ClockHour(random.nextInt(24)), 1 + random.nextInt(23)),
						Length.thou("0.5").times(1 + random.nextInt(6))));
			}
			String edited = TextEdit.apply(ShimEdits.pieces(round, pieces), text);
			EditedRow.assertOnlyChangedIn(EditedRow.node(job.service()), text, edited);
			TestShop reread = Examples.with(file, edited);
			KeyService row = reread.document(Examples.name(file)).getPlans().get(0).getKeys().get(index);
			Round last = row.getRounds().get(row.getRounds().size() - 1);
			assertEquals(pieces, EditedRow.pieces(last));
			assertEquals(pieces.isEmpty(), last.isLevel());
			assertEquals(LeafReading.of(round), LeafReading.of(last));
			assertEquals(EditedRow.rest(job.service()), EditedRow.rest(row));
			assertEquals(job.stack(), Lengths.of(row.getStack()));
			assertEquals(List.of(), reread.resource(Examples.name(file)).getErrors());
		}
	}
}

package padwright.workup.leak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.engine.leak.Air;
import padwright.engine.leak.KeyLeak;
import padwright.engine.leak.LeakComparison;
import padwright.engine.leak.LikelyFlow;
import padwright.engine.leak.Tester;
import padwright.model.keysystem.Key;
import padwright.workup.DemoPlan;
import padwright.workup.service.KeyRim;

class PlanLeakTest {

	private static final Tester TESTER = new Tester(1000, Air.at(20));

	private final DemoPlan demo = new DemoPlan();

	@Test
	void aDotLeaksSomething() {
		demo.felt(demo.row(demo.key("F")), ". . . .");
		LikelyFlow flow = PlanLeak.of(demo.solved(), TESTER).comparison().before().all();
		assertTrue(flow.expected() > 0.1, flow.toString());
		assertTrue(flow.low() < flow.expected() && flow.expected() < flow.high(), flow.toString());
	}

	@Test
	void whatIsDoneIsExpectedToHelp() {
		demo.felt(demo.row(demo.key("F")), ". 1 2 0.5");
		LeakComparison comparison = PlanLeak.of(demo.solved(), TESTER).comparison();
		assertTrue(comparison.after().all().expected() < comparison.before().all().expected() / 2, comparison.toString());
	}

	@Test
	void aKeyThatGetsNothingLeaksAsBefore() {
		demo.felt(demo.row(demo.key("F")), ". . 0.5 .").setLevel(true);
		LeakComparison.Row row = PlanLeak.of(demo.solved(), TESTER).comparison().rows().get(0);
		assertTrue(row.before().flow().expected() > 0);
		assertEquals(row.before(), row.after());
	}

	@Test
	void theWorstComesFirst() {
		demo.felt(demo.row(demo.key("F")), ". . 0.5 .");
		demo.felt(demo.row(demo.key("E")), ". . 2 .");
		assertEquals(List.of("E", "F"), PlanLeak.of(demo.solved(), TESTER).comparison().before().ranked().stream()
				.map(KeyLeak::key).toList());
	}

	@Test
	void aRimWithoutAWidthIsTakenToBeUsual() {
		Key key = demo.key("F");
		key.getHole().setRimWidth(null);
		demo.felt(demo.row(key), ". . 1 .");
		PadsAsFelt felt = PadsAsFelt.of(demo.service());
		assertEquals(List.of("F"), felt.assumedWidths());
		assertEquals(KeyRim.USUAL_WIDTH, felt.pads().get(0).rim().width());
	}

	@Test
	void keysThatCannotBeToldAreNamed() {
		Key holeless = demo.key("E");
		holeless.setHole(null);
		demo.felt(demo.row(holeless), ". . 1 .");
		demo.row(demo.key("F"));
		demo.felt(demo.row(demo.key("G")), ". . 1");
		PadsAsFelt felt = PadsAsFelt.of(demo.service());
		assertEquals(List.of(), felt.pads());
		assertEquals(List.of("E", "F", "G"), felt.leftOut().stream().map(UnknownLeak::key).toList());
		assertEquals("3 readings for 4 hours", felt.leftOut().get(2).why().words());
	}

	@Test
	void withoutFilmThereIsABeforeAndNoChange() {
		demo.plan.getFitting().setFilms(null);
		demo.felt(demo.row(demo.key("F")), ". . 1 .");
		LeakComparison.Row row = PlanLeak.of(demo.solved(), TESTER).comparison().rows().get(0);
		assertEquals(row.before(), row.after());
	}

	@Test
	void theLaterOfTwoRowsForOneKeyCounts() {
		Key key = demo.key("F");
		demo.felt(demo.row(key), ". . 1 .");
		demo.felt(demo.row(key), ". . . .");
		KeyLeak leak = PlanLeak.of(demo.solved(), TESTER).comparison().before().ranked().get(0);
		demo.plan.getKeys().remove(0);
		assertEquals(PlanLeak.of(demo.solved(), TESTER).comparison().before().ranked().get(0), leak);
	}
}

package padwright.views.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.drawing.scene.Scene;
import padwright.views.Bench;
import padwright.views.Palette;
import padwright.views.clock.ClockProposal;
import padwright.views.clock.ClockState;
import padwright.views.scenes.Target;
import padwright.views.scenes.Targets;

class BenchSceneTest {

	private static BenchSession session(String row) {
		Bench bench = Bench.ofEightHours(row);
		BenchSession session = new BenchSession(edits -> true, BenchKeys.standard(), new JobClock(() -> 0));
		session.show(ClockState.of(bench.row("B")));
		if (session.isRead()) {
			session.propose(ClockProposal.solve(bench.row("B"), job -> {
			}));
		}
		return session;
	}

	/** Of displays with 96 dots to the inch, and of a small one with twice as many. */
	@ParameterizedTest
	@CsvSource({"339, 190", "508, 286", "169, 95"})
	void everyTargetIsAFingerWideAndInsideOfTheWindow(double width, double height) {
		Scene scene = session("key B felt . . 1 2 1 . 0.5 .").draw(Palette.light(), width, height);
		List<Target> targets = Targets.of(scene).all();
		assertTrue(targets.stream().map(Target::id).toList().containsAll(
				List.of("leaf-5", "leaf-1", "leaf-2", "DRAGS", "ALL_DRAG", "BACK", "PLACED", "OUT", "AGAIN", "NEXT",
						"PREVIOUS", "PAUSE", "SAY", "hour-10.5")), targets.toString());
		for (Target target : targets) {
			assertTrue(target.bounds().width() >= BenchScene.TOUCH && target.bounds().height() >= BenchScene.TOUCH,
					target.toString());
			assertTrue(target.bounds().left() >= 0 && target.bounds().top() >= 0
					&& target.bounds().right() <= width && target.bounds().bottom() <= height, target.toString());
		}
	}

	@Test
	void whatIsTypedAndWhereItGoesIsSeen() {
		BenchSession session = session("key B felt . 1");
		assertEquals("At 3 o'clock, 6 left", BenchPicture.of(session).toDo());
		session.press("0");
		BenchPicture.Cell third = BenchPicture.of(session).cells().get(2);
		assertTrue(third.current());
		assertEquals("0", third.text());
		assertEquals("\u2022", BenchPicture.of(session).cells().get(0).text());
	}

	@Test
	void withoutAKeyThereIsAWord() {
		BenchSession session = new BenchSession(edits -> true, BenchKeys.standard(), new JobClock(() -> 0));
		assertEquals(List.of(), BenchPicture.of(session).cells());
		session.draw(Palette.dark(), 200, 100);
	}
}

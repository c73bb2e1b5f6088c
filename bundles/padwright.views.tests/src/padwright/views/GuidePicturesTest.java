package padwright.views;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.engine.clock.ClockHour;
import padwright.views.bench.BenchKeys;
import padwright.views.bench.BenchSession;
import padwright.views.bench.JobClock;
import padwright.views.board.BoardScene;
import padwright.views.board.BoardState;
import padwright.views.clock.ClockProposal;
import padwright.views.clock.ClockSession;
import padwright.views.clock.ClockState;
import padwright.views.clock.HourPicture;
import padwright.views.map.KeyMapScene;
import padwright.views.map.KeyMapState;
import padwright.views.section.CupSectionScene;
import padwright.views.section.CupSectionState;
import padwright.workup.checks.ModelChecks;
import padwright.workup.next.NextSteps;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** The pictures of the guide that show what the views draw of its own plans are what they draw today. */
class GuidePicturesTest {

	private static final String EIGHT = "12 1.5 3 4.5 6 7.5 9 10.5";
	private static final double WIDE = 170;
	private static final double NARROW = 110;
	private static final double WINDOW = 2.2;

	@ParameterizedTest
	@CsvSource({
			"first-plan.html,    felt.plan,          Fs, false, first-felt",
			"first-plan.html,    felt.plan,          Ds, true,  first-answer",
			"leak-at-the-g.html, plans/g-leak.plan,  G,  true,  leak-answer",
			"plans.html,         rounds.plan,        Fs, false, rounds" })
	void aClockIsUpToDate(String page, String file, String key, boolean isSolved, String picture) throws IOException {
		KeyJob row = GuidePlan.onPage(page, file).row(key);
		GuidePicture.assertUpToDate(picture, WIDE, () -> clock(row, isSolved));
	}

	@Test
	void theClockOfTheSecondRoundAtTheBenchIsUpToDate() throws IOException {
		KeyJob row = GuidePlan.ofRow("Rigid on Disc20 with Clear glue Shellac", EIGHT, "key Ds felt . . 1 1 1.5 1 0.5 . shim 1 from 3 to 9\n"
				+ "felt at 12.5 2 3.5 5 6.5 8 9.5 11 : . . . 0.5 . . . . out 1 from 3 to 9 shim 1 from 2.5 to 8.5").row("Ds");
		GuidePicture.assertUpToDate("second-round", WIDE, () -> clock(row, false));
	}

	@Test
	void theClockOfAPieceThatTellsTheStiffnessIsUpToDate() throws IOException {
		KeyJob row = GuidePlan.ofRow("Felt with Clear", "12 1 2 3 4 5 6 7 8 9 10 11",
				"key A felt 2 2 3 3 3 2 2 1.5 0.5 0.5 0.5 1 shim 3 from 2 to 3.5\nfelt 2 2 1.5 1 2 3 2 1 0.5 0.5 0.5 1").row("A");
		GuidePicture.assertUpToDate("stiffness", WIDE, () -> clock(row, false));
	}

	private static Scene clock(KeyJob row, boolean isSolved) {
		ClockSession session = new ClockSession(edits -> true);
		session.show(ClockState.of(row));
		if (isSolved) {
			session.propose(Optional.of(ClockProposal.solve(row, job -> {
			})));
		}
		return session.draw(Palette.paper(), WINDOW);
	}

	@Test
	void bothSetsOfHoursAreUpToDate() throws IOException {
		GuidePicture.assertUpToDate("hours", NARROW, () -> {
			Scene first = hours("12", "1.5", "3", "4.5", "6", "7.5", "9", "10.5");
			List<Element> elements = new ArrayList<>(first.elements());
			elements.add(Group.of(hours("12.5", "2", "3.5", "5", "6.5", "8", "9.5", "11").elements()).at(first.width(), 0));
			return new Scene(first.title(), 2 * first.width(), first.height(), elements);
		});
	}

	private static Scene hours(String... hours) {
		return HourPicture.draw(Stream.of(hours).map(BigDecimal::new).map(ClockHour::ofHour).collect(Collectors.toSet()), Palette.paper());
	}

	@ParameterizedTest
	@CsvSource({
			"Rigid on Disc20 with Clear glue Shellac, '', 3, first-section",
			"Rigid on Disc20 with Clear glue Shellac, stack 7.5 4 4, 6, rigid-pad",
			"Felt with Clear glue Shellac,            stack 7.5 4 4, 6, felt-pad" })
	void aSectionIsUpToDate(String fit, String stack, double exaggeration, String picture) throws IOException {
		KeyJob row = GuidePlan.ofRow(fit, EIGHT, "key Fs empty 15 15 15 15 14.5 15 15.5 15 " + stack).row("Fs");
		GuidePicture.assertUpToDate(picture, WIDE,
				() -> CupSectionScene.draw(CupSectionState.of(row), Palette.paper(), exaggeration, WINDOW));
	}

	@Test
	void theMapOfTheLeakIsUpToDate() throws IOException {
		GuidePlan leak = GuidePlan.onPage("leak-at-the-g.html", "plans/g-leak.plan");
		GuidePicture.assertUpToDate("leak-map", WIDE, () -> KeyMapScene.draw(
				KeyMapState.of(leak.plan(), ModelChecks.check(leak.document())), Palette.paper(), Set.of("G"), WINDOW));
	}

	/** In the morning of one page, with the jobs of others beside it. */
	@Test
	void theBoardIsUpToDate() throws IOException {
		List<ServicePlan> plans = Stream.of(GuidePlan.first("morning-after.html", "plans/morning.plan"),
				GuidePlan.onPage("leak-at-the-g.html", "plans/g-leak.plan"),
				GuidePlan.onPage("new-foot-joint.html", "plans/new-foot.plan"), GuidePlan.onPage("job.html", "diary.plan"))
				.map(GuidePlan::plan).toList();
		GuidePicture.assertUpToDate("board", WIDE, () -> BoardScene.draw(
				BoardState.of(NextSteps.of(plans, LocalDate.of(2026, 3, 3)), Optional.empty()), Palette.paper(), WINDOW));
	}

	@Test
	void theClockOfTheEveningIsUpToDate() throws IOException {
		KeyJob row = GuidePlan.ofRow("Rigid on Disc20 with Clear glue Shellac", EIGHT,
				"key E stack 7.5 7.5 felt . . 0.5 0.5 . . . . shim 0.5 from 2 to 5").row("E");
		GuidePicture.assertUpToDate("evening", WIDE, () -> clock(row, false));
	}

	@Test
	void theAnswerInBenchModeIsUpToDate() throws IOException {
		KeyJob row = GuidePlan.onPage("first-plan.html", "felt.plan").row("Ds");
		GuidePicture.assertUpToDate("bench-answer", WIDE, () -> {
			BenchSession session = new BenchSession(edits -> true, BenchKeys.standard(), new JobClock(() -> 0));
			session.show(ClockState.of(row));
			session.propose(ClockProposal.solve(row, job -> {
			}));
			return session.draw(Palette.paper(), 339, 190);
		});
	}
}

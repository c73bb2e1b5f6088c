package padwright.workup.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;

import padwright.model.plan.Plan;
import padwright.model.plan.PlanFactory;
import padwright.model.plan.Player;
import padwright.workup.job.PlanLines.Line;
import padwright.workup.words.Spoken;

class SearchReportTest {

	private static final List<SearchReport.Searched> PLANS = List.of(
			new SearchReport.Searched(plan("First", "A-1", "P-7"), List.of(new Line("Key F has no row", ""), new Line("Key E: shim it", ""),
					new Line("Polster G: geklemmt", "clamped G"))),
			new SearchReport.Searched(plan("Second", "B-2", null), List.of()));

	private static Plan plan(String name, String serial, String playerName) {
		Plan plan = PlanFactory.eINSTANCE.createPlan();
		plan.setName(name);
		plan.setSerial(serial);
		if (playerName != null) {
			Player player = PlanFactory.eINSTANCE.createPlayer();
			player.setName(playerName);
			plan.setPlayer(player);
		}
		return plan;
	}

	private static List<List<String>> found(String sought) {
		return SearchReport.of(PLANS, sought).tables().get(0).rows().stream()
				.map(row -> List.of(row.plan().orElseThrow(), row.cells().get(5))).toList();
	}

	@Test
	void plansAreFoundBySerialPlayerAndFinding() {
		assertEquals(List.of(List.of("First", "")), found("a-1"));
		assertEquals(List.of(List.of("First", "")), found("p-7"));
		assertEquals(List.of(List.of("First", "Key E: shim it")), found("SHIM"));
		assertEquals(List.of(List.of("First", "Key E: shim it")), found("a-1 shim"));
		assertEquals(List.of(), found("b-2 shim"));
	}

	/** As somebody wrote it, and by the words of the reader, who sees those. */
	@Test
	void whatIsWrittenIsFoundByTheWordsOfTheReaderToo() {
		assertEquals(List.of(List.of("First", "clamped G")), found("clamped"));
		for (String sought : List.of("geklemmt", "clamped", "a-1 Polster G")) {
			assertEquals(List.of(List.of("First", "Polster G: geklemmt")), Spoken.in(Locale.GERMAN, () -> found(sought)), sought);
		}
	}

	@Test
	void reportsSpeakGermanToo() {
		String lead = Spoken.in(Locale.GERMAN, () -> SearchReport.of(PLANS, "p-7").leads().get(0));
		assertEquals("p-7: 1 Stelle in 2 Pl\u00e4nen", lead);
	}
}

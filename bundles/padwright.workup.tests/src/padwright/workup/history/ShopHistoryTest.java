package padwright.workup.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.engine.clock.ClockHour;
import padwright.model.plan.KeyService;
import padwright.model.plan.PadState;
import padwright.model.plan.Round;
import padwright.workup.DemoPlan;
import padwright.workup.forecast.ShopForecast;
import padwright.workup.history.Movement.Kind;
import padwright.workup.service.ServicePlan;

/** Invented services of the key F. */
class ShopHistoryTest {

	private static final LocalDate TODAY = LocalDate.parse("2026-06-01");

	@Test
	void aPadThatSankEvenlyHasSettled() {
		Movement movement = history(service("2024-03-01", ". . . ."), service("2025-03-01", "1 1 1 1")).moved().get(0);
		assertEquals(Kind.SETTLED, movement.kind());
		assertEquals(LocalDate.parse("2024-03-01"), movement.left());
		assertEquals(LocalDate.parse("2025-03-01"), movement.found());
		assertTrue(movement.words().startsWith("settled by 1 thou"), movement.words());
	}

	@Test
	void aPadThatRoseHasSwelled() {
		assertEquals(Kind.SWELLED,
				history(service("2024-03-01", "2 2 2 2"), service("2025-03-01", ". . . .")).moved().get(0).kind());
	}

	@Test
	void aPadThatOpenedAtOneSideHasShifted() {
		Movement movement = history(service("2024-03-01", "1 1 1 1"), service("2025-03-01", "1 2 1 .")).moved().get(0);
		assertEquals(Kind.SHIFTED, movement.kind());
		assertEquals(ClockHour.ofHour(3), movement.hour());
		assertTrue(movement.most().signum() > 0, movement.toString());
		assertTrue(movement.words().startsWith("opened by"), movement.words());
	}

	@Test
	void aPadThatReadsTheSameHeld() {
		assertEquals("held",
				history(service("2024-03-01", ". 1 . ."), service("2025-03-01", ". 1 . .")).moved().get(0).words());
	}

	/** What it was left at is what was predicted with the last piece in place, not what was felt before it. */
	@Test
	void piecesCountForWhatAPadWasLeftAt() {
		DemoPlan shimmed = service("2024-03-01", "2 2 2 2");
		for (String[] arc : new String[][] { { "12", "6" }, { "6", "12" } }) {
			shimmed.shim(row(shimmed).getRounds().get(0), "2", arc[0], arc[1]);
		}
		assertEquals(Kind.SETTLED, history(shimmed, service("2025-03-01", "2 2 2 2")).moved().get(0).kind());
	}

	@Test
	void whatWasFeltAsDeliveredCountsBeforeWhatWasPredicted() {
		DemoPlan delivered = service("2024-03-01", "2 2 2 2");
		Round left = delivered.felt(row(delivered), ". . . .");
		row(delivered).setDelivered(left);
		assertEquals(Kind.SETTLED, history(delivered, service("2025-03-01", "2 2 2 2")).moved().get(0).kind());
		assertEquals(Kind.HELD, history(service("2024-03-01", "2 2 2 2"), service("2025-03-01", "2 2 2 2")).moved()
				.get(0).kind());
	}

	@Test
	void aNewPadStartsAnew() {
		DemoPlan torn = service("2025-03-01", "1 1 1 1");
		row(torn).setFound(PadState.TORN);
		KeyHistory key = history(service("2024-03-01", ". . . ."), torn, service("2026-03-01", "3 3 3 3"));
		assertEquals(List.of(LocalDate.parse("2025-03-01")), key.torn());
		assertEquals(List.of(LocalDate.parse("2024-03-01"), LocalDate.parse("2025-03-01")), key.fitted());
		assertEquals(List.of(LocalDate.parse("2025-03-01")), key.moved().stream().map(Movement::left).toList());
	}

	@Test
	void aServiceWithoutReadingsLeavesTheRecord() {
		DemoPlan silent = new DemoPlan();
		silent.player("P-1", "2025-03-01");
		silent.plan.setSerial("A-1");
		silent.row(silent.key("F"));
		KeyHistory key = history(service("2024-03-01", ". . . ."), silent, service("2026-03-01", "1 1 1 1"));
		assertEquals(3, key.services());
		assertEquals(LocalDate.parse("2024-03-01"), key.moved().get(0).left());
	}

	@Test
	void instrumentsAndPlayersAreToldApart() {
		DemoPlan other = service("2024-03-01", ". . . .");
		other.plan.setSerial("B-2");
		DemoPlan borrowed = service("2025-03-01", ". . . .");
		borrowed.plan.getPlayer().setName("P-2");
		DemoPlan dateless = service("2025-03-01", ". . . .");
		dateless.plan.setDate(null);
		List<ServicePlan> plans = plans(service("2025-04-01", ". . . ."), other, borrowed, dateless);
		ShopHistory history = ShopHistory.of(plans, TODAY);
		assertEquals(List.of("B-2 P-1", "A-1 P-2", "A-1 P-1"),
				history.instruments().stream().map(each -> each.instrument() + " " + each.player()).toList());
		assertEquals(ShopForecast.of(plans, TODAY), history.forecast());
	}

	@Test
	void theTrendIsOfTheSpreadAsFound() {
		KeyHistory key = history(service("2020-03-01", ". . . ."), service("2021-03-01", ". 1 . ."),
				service("2022-03-01", ". 1.5 . ."), service("2023-03-01", ". 3 . ."));
		assertEquals(3, key.trend().orElseThrow().services());
		assertTrue(key.trend().orElseThrow().perYear().signum() > 0);
		assertTrue(history(service("2020-03-01", ". . . ."), service("2021-03-01", ". 1 . .")).trend().isEmpty());
	}

	private static KeyHistory history(DemoPlan... services) {
		return ShopHistory.of(plans(services), TODAY).instruments().get(0).keys().get(0);
	}

	private static List<ServicePlan> plans(DemoPlan... services) {
		return Arrays.stream(services).map(DemoPlan::service).toList();
	}

	private static DemoPlan service(String date, String readings) {
		DemoPlan demo = new DemoPlan();
		demo.player("P-1", date);
		demo.plan.setSerial("A-1");
		demo.felt(demo.row(demo.key("F")), readings);
		return demo;
	}

	private static KeyService row(DemoPlan demo) {
		return demo.plan.getKeys().get(0);
	}
}

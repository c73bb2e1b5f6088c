package padwright.workup.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
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
	void aPadThatIsNowWideOpenHasOpened() {
		Movement movement = history(service("2024-03-01", ". . . ."), service("2025-03-01", "2 1 . 1")).moved().get(0);
		assertEquals(Kind.OPENED, movement.kind());
		assertEquals(LocalDate.parse("2024-03-01"), movement.left());
		assertEquals(LocalDate.parse("2025-03-01"), movement.found());
		assertTrue(movement.chance() >= 0.9, movement.toString());
		assertTrue(MovementWords.of(movement).matches("opened by about [0-9.]+ thou, most at .* \\((over )?9\\d %\\)"),
				MovementWords.of(movement));
	}

	@Test
	void aPadThatWasWideOpenHasClosed() {
		assertEquals(Kind.CLOSED,
				history(service("2024-03-01", "2 1 . 1"), service("2025-03-01", ". . . .")).moved().get(0).kind());
	}

	@Test
	void whatReadsTheSameTellsNoChange() {
		Movement movement = history(service("2024-03-01", ". 1 . ."), service("2025-03-01", ". 1 . .")).moved().get(0);
		assertEquals(Kind.HELD, movement.kind());
		assertEquals("no change told", MovementWords.of(movement));
		assertEquals(Length.ZERO, movement.by());
	}

	/** One leaf up or down at one hour is what the hand's scatter does. */
	@Test
	void whatMayBeTheHandTellsNoChange() {
		assertEquals(Kind.HELD,
				history(service("2024-03-01", ". 0.5 . ."), service("2025-03-01", ". . . .")).moved().get(0).kind());
	}

	/** What it was left at is what is expected with the last piece in place, not what was felt before it. */
	@Test
	void piecesCountForWhatAPadWasLeftAt() {
		DemoPlan shimmed = service("2024-03-01", "2 1 . 1");
		shimmed.shim(row(shimmed).getRounds().get(0), "2", "10", "2");
		assertEquals(Kind.HELD, history(service("2024-03-01", "2 1 . 1"), service("2025-03-01", "2 1 . 1")).moved()
				.get(0).kind());
		assertFalse(history(shimmed, service("2025-03-01", "2 1 . 1")).moved().get(0).kind() == Kind.HELD);
	}

	@Test
	void whatWasFeltAsDeliveredCounts() {
		DemoPlan delivered = service("2024-03-01", "2 1 . 1");
		row(delivered).getRounds().clear();
		Round left = delivered.felt(row(delivered), ". . . .");
		row(delivered).setDelivered(left);
		assertEquals(Kind.OPENED, history(delivered, service("2025-03-01", "2 1 . 1")).moved().get(0).kind());
	}

	@Test
	void aNewPadStartsARowOfItsOwn() {
		DemoPlan torn = service("2025-03-01", "1 1 1 .");
		row(torn).setFound(PadState.TORN);
		List<KeyHistory> pads = histories(service("2024-03-01", ". . . ."), torn, service("2026-03-01", "3 3 3 ."));
		assertEquals(List.of(Optional.of(LocalDate.parse("2024-03-01")), Optional.of(LocalDate.parse("2025-03-01"))),
				pads.stream().map(KeyHistory::fitted).toList());
		assertEquals(List.of(Optional.of(LocalDate.parse("2025-03-01")), Optional.empty()),
				pads.stream().map(KeyHistory::torn).toList());
		assertEquals(List.of(), pads.get(0).moved());
		assertEquals(List.of(LocalDate.parse("2025-03-01")), pads.get(1).moved().stream().map(Movement::left).toList());
	}

	@Test
	void aPadThatWasTornAtFirstIsTold() {
		DemoPlan torn = service("2024-03-01", ". . . .");
		row(torn).setFound(PadState.TORN);
		List<KeyHistory> pads = histories(torn);
		assertEquals(Optional.of(LocalDate.parse("2024-03-01")), pads.get(0).torn());
		assertEquals(Optional.empty(), pads.get(0).fitted());
		assertEquals(2, pads.size());
	}

	@Test
	void aServiceWithoutReadingsLeavesTheRecord() {
		DemoPlan silent = new DemoPlan();
		silent.player("P-1", "2025-03-01");
		silent.plan.setSerial("A-1");
		silent.row(silent.key("F"));
		KeyHistory key = history(service("2024-03-01", ". . . ."), silent, service("2026-03-01", "1 1 1 ."));
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
	void theTrendIsOfTheWidestGapAndOfOnePad() {
		DemoPlan[] services = { service("2020-03-01", ". . . ."), service("2021-03-01", ". 0.5 . ."),
				service("2022-03-01", ". 2 1 ."), service("2023-03-01", "1 3 3 1") };
		KeyHistory key = history(services);
		assertEquals(3, key.trend().orElseThrow().services());
		assertTrue(key.trend().orElseThrow().perYear().isLongerThan(Length.thou("0.5")), key.trend().toString());
		row(services[2]).setFound(PadState.TORN);
		assertTrue(histories(services).stream().allMatch(pad -> pad.trend().isEmpty()));
	}

	private static List<KeyHistory> histories(DemoPlan... services) {
		return ShopHistory.of(plans(services), TODAY).instruments().get(0).keys();
	}

	private static KeyHistory history(DemoPlan... services) {
		return histories(services).get(0);
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

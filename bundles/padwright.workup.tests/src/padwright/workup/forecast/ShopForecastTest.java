package padwright.workup.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.forecast.AgedMaterial;
import padwright.engine.forecast.TearRate;
import padwright.engine.forecast.TornPads;
import padwright.model.keysystem.Key;
import padwright.model.plan.KeyService;
import padwright.model.plan.PadState;
import padwright.model.plan.PlanFactory;
import padwright.model.plan.Saliva;
import padwright.model.stock.LayerRole;
import padwright.model.stock.Material;
import padwright.workup.DemoPlan;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

class ShopForecastTest {

	private static final LocalDate TODAY = LocalDate.parse("2026-06-01");

	@Test
	void tornPadsOfLaterServicesFeedTheBelief() {
		PlayerForecast player = forecast(service("P-1", "2025-03-01", 3), service("P-1", "2023-03-01", 5),
				service("P-1", "2024-02-29", 1)).players().get(0);
		assertEquals(5, player.tornBefore());
		assertEquals(4, player.torn());
		List<TornPads> history = List.of(new TornPads(1, 365 / 365.25), new TornPads(3, 366 / 365.25));
		assertEquals(history, player.history());
		assertEquals(TearRate.MOST_PLAYERS.after(history), player.rate());
		assertEquals(TearRate.MOST_PLAYERS.after(history).forecast(1, 0.9), player.forecast());
		assertEquals(LocalDate.parse("2026-03-01"), player.nextService());
	}

	@Test
	void theNewestWordOnSalivaDecidesTheBeliefBefore() {
		DemoPlan mild = service("P-1", "2024-03-01", 0);
		mild.plan.getPlayer().setSaliva(Saliva.MILD);
		DemoPlan acidic = service("P-1", "2025-03-01", 0);
		acidic.plan.getPlayer().setSaliva(Saliva.ACIDIC);
		DemoPlan silent = service("P-1", "2026-03-01", 0);
		assertEquals(Optional.of(Saliva.ACIDIC), forecast(silent, acidic, mild).players().get(0).saliva());
		assertEquals(TearRate.ACID_SALIVA, forecast(acidic).players().get(0).rate());
		assertEquals(TearRate.MOST_PLAYERS, forecast(silent).players().get(0).rate());
	}

	@Test
	void twoInstrumentsOnOneDayAreOneService() {
		PlayerForecast player = forecast(service("P-1", "2024-03-01", 0), service("P-1", "2025-03-01", 2),
				service("P-1", "2025-03-01", 1)).players().get(0);
		assertEquals(List.of(new TornPads(3, 365 / 365.25)), player.history());
	}

	@Test
	void eachInstrumentCountsOverItsOwnYears() {
		PlayerForecast player = forecast(instrument("A-1", "2024-03-01", 4), instrument("A-1", "2025-03-01", 2),
				instrument("P-7", "2024-09-01", 5), instrument("P-7", "2025-09-01", 1)).players().get(0);
		assertEquals(2, player.instruments());
		assertEquals(9, player.tornBefore());
		assertEquals(List.of(new TornPads(2, 365 / 365.25), new TornPads(1, 365 / 365.25)), player.history());
		assertEquals(730 / 365.25, player.years(), 1e-12);
		assertEquals(TearRate.MOST_PLAYERS.after(player.history()).forecast(2, 0.9), player.forecast());
	}

	private static DemoPlan instrument(String serial, String date, int torn) {
		DemoPlan demo = service("P-1", date, torn);
		demo.plan.setSerial(serial);
		return demo;
	}

	@Test
	void playersAreToldApart() {
		assertEquals(List.of("P-1", "P-2"), forecast(service("P-2", "2025-03-01", 1), service(" P-1", "2024-03-01", 1))
				.players().stream().map(PlayerForecast::player).toList());
	}

	@Test
	void plansWithoutDateOrPlayerAreNamed() {
		DemoPlan dateless = service("P-1", "2025-03-01", 1);
		dateless.plan.setDate(null);
		DemoPlan nameless = service(null, "2025-03-01", 1);
		DemoPlan playerless = service("P-1", "2025-03-01", 1);
		playerless.plan.setPlayer(null);
		ShopForecast forecast = forecast(dateless, nameless, playerless);
		assertEquals(List.of(), forecast.players());
		assertEquals(List.of(new LeftOutPlan("Spring", Phrase.of("past.noDate")),
				new LeftOutPlan("Spring", Phrase.of("past.noPlayer")),
				new LeftOutPlan("Spring", Phrase.of("past.noPlayer"))),
				forecast.leftOut());
	}

	@Test
	void materialsAgeFromThePlanThatFittedThem() {
		History history = new History("10");
		history.service("2016-03-01", null);
		history.service("2020-03-01", PadState.SOUND);
		assertEquals(List.of(new AgedPads("A-1", "P-1",
				new AgedMaterial("felt", LocalDate.parse("2016-03-01"), 10), List.of("F"))), history.aged());
	}

	@Test
	void aTornPadIsReplaced() {
		History history = new History("10");
		history.service("2016-03-01", null);
		history.service("2020-03-01", PadState.TORN);
		assertEquals(List.of(), history.aged());
	}

	@Test
	void aMeasuredEmptyCupOrAPadOfItsOwnIsANewPad() {
		History measured = new History("10");
		measured.service("2016-03-01", null);
		measured.service("2020-03-01", null).setEmpty(new DemoPlan().thicknesses("15 15 15 15"));
		assertEquals(List.of(), measured.aged());
		History chosen = new History("10");
		chosen.service("2016-03-01", null);
		KeyService row = chosen.service("2020-03-01", null);
		row.setFitting(PlanFactory.eINSTANCE.createFitting());
		row.getFitting().setPad(chosen.demo.pad);
		assertEquals(List.of(), chosen.aged());
	}

	@Test
	void lessThanAYearIsNear() {
		History near = new History("10");
		near.service("2017-05-31", null);
		assertEquals(1, near.aged().size());
		History far = new History("10");
		far.service("2017-06-02", null);
		assertEquals(List.of(), far.aged());
	}

	@Test
	void partsOfAYearAreCutOff() {
		History history = new History("6.5");
		history.service("2019-03-01", null);
		assertEquals(6, history.aged().get(0).material().limitYears());
		History brief = new History("0.5");
		brief.service("2025-03-01", null);
		assertEquals(1, brief.aged().get(0).material().limitYears());
	}

	/** One key with a pad that lasts some years, over several plans of one instrument. */
	private static final class History {

		private final DemoPlan demo = new DemoPlan();
		private final Key key = demo.key("F");
		private final List<ServicePlan> plans = new ArrayList<>();

		History(String years) {
			Material felt = demo.material("felt", null, null);
			felt.setLasts(new BigDecimal(years));
			demo.layer(LayerRole.FACE, felt, "80");
		}

		KeyService service(String date, PadState found) {
			DemoPlan next = plan(date);
			KeyService row = next.row(key);
			if (found != null) {
				row.setFound(found);
			}
			plans.add(next.service());
			return row;
		}

		private DemoPlan plan(String date) {
			DemoPlan next = new DemoPlan();
			next.player("P-1", date);
			next.plan.setSerial("A-1");
			next.plan.setSystem(demo.system);
			next.plan.getFitting().setPad(demo.pad);
			return next;
		}

		List<AgedPads> aged() {
			return ShopForecast.of(plans, TODAY).aged();
		}
	}

	private static DemoPlan service(String player, String date, int torn) {
		DemoPlan demo = new DemoPlan();
		demo.player(player, date);
		for (int pad = 0; pad < torn; pad++) {
			demo.row(demo.key("K" + pad)).setFound(PadState.TORN);
		}
		demo.row(demo.key("Sound")).setFound(PadState.SOUND);
		return demo;
	}

	private static ShopForecast forecast(DemoPlan... plans) {
		return ShopForecast.of(List.of(plans).stream().map(DemoPlan::service).toList(), TODAY);
	}
}

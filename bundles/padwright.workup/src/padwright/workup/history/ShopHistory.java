package padwright.workup.history;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import padwright.workup.calibration.PadCalibration;
import padwright.workup.forecast.PastService;
import padwright.workup.forecast.ShopForecast;
import padwright.workup.service.ServicePlan;

/**
 * What the plans of some years tell.
 *
 * @param instruments by the day of their first service
 * @param forecast    of the players' next services; it also names the plans that tell nothing
 * @param calibration stiffness of each pad article that rounds tell of
 */
public record ShopHistory(List<InstrumentHistory> instruments, ShopForecast forecast,
		List<PadCalibration> calibration) {

	private record Instrument(String player, String name) {
	}

	public ShopHistory {
		instruments = List.copyOf(instruments);
		calibration = List.copyOf(calibration);
	}

	/** From plans in any order. Plans of one serial, or one system where there is none, and one player belong together. */
	public static ShopHistory of(Collection<ServicePlan> plans, LocalDate today) {
		Map<Instrument, List<PastService>> instruments = plans.stream()
				.filter(plan -> PastService.obstacle(plan).isEmpty()).map(PastService::of)
				.sorted(PastService.OLDEST_FIRST)
				.collect(Collectors.groupingBy(service -> new Instrument(service.player(), service.instrument()),
						LinkedHashMap::new, Collectors.toList()));
		return new ShopHistory(instruments.values().stream().map(InstrumentHistory::of).toList(),
				ShopForecast.of(plans, today), PadCalibration.of(plans));
	}
}

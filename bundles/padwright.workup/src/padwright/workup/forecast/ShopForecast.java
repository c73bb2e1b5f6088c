package padwright.workup.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

import padwright.workup.service.ServicePlan;

/**
 * What the plans of a shop tell about the time to come.
 *
 * @param players by name
 * @param aged materials past their limit or less than a year before it, the first due first
 * @param leftOut plans without a date or a player, in the order given
 */
public record ShopForecast(LocalDate today, List<PlayerForecast> players, List<AgedPads> aged,
		List<LeftOutPlan> leftOut) {

	private record Instrument(String player, String name) {
	}

	public ShopForecast {
		players = List.copyOf(players);
		aged = List.copyOf(aged);
		leftOut = List.copyOf(leftOut);
	}

	/** From plans in any order. */
	public static ShopForecast of(Collection<ServicePlan> plans, LocalDate today) {
		List<LeftOutPlan> leftOut = new ArrayList<>();
		plans.forEach(plan -> PastService.obstacle(plan)
				.ifPresent(why -> leftOut.add(new LeftOutPlan(name(plan), why))));
		List<PastService> services = plans.stream().filter(plan -> PastService.obstacle(plan).isEmpty())
				.map(PastService::of).sorted(PastService.OLDEST_FIRST).toList();
		Map<String, List<PastService>> byPlayer = services.stream()
				.collect(Collectors.groupingBy(PastService::player, TreeMap::new, Collectors.toList()));
		return new ShopForecast(today, byPlayer.values().stream().map(PlayerForecast::of).toList(),
				aged(services, today), leftOut);
	}

	private static String name(ServicePlan plan) {
		return Optional.ofNullable(plan.plan().getName()).orElse("?");
	}

	private static List<AgedPads> aged(List<PastService> services, LocalDate today) {
		Map<Instrument, FittedPads> instruments = new LinkedHashMap<>();
		services.forEach(service -> instruments
				.computeIfAbsent(new Instrument(service.player(), service.instrument()), unseen -> new FittedPads())
				.add(service));
		return instruments.entrySet().stream()
				.flatMap(pads -> pads.getValue().aged(pads.getKey().name(), pads.getKey().player()).stream())
				.filter(pads -> pads.isPastOrNear(today))
				.sorted(Comparator.comparing(pads -> pads.material().due())).toList();
	}
}

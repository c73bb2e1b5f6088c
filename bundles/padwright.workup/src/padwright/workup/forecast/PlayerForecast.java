package padwright.workup.forecast;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import padwright.engine.forecast.TearForecast;
import padwright.engine.forecast.TearRate;
import padwright.engine.forecast.TornPads;
import padwright.model.plan.Saliva;

/**
 * How many pads of one player will tear, on all of the player's instruments, by the next yearly service (a yearly
 * clean-oil-adjust is common practice, no source).
 *
 * @param player name
 * @param saliva as the newest plan that says it has it; empty if none does
 * @param services the days of service, oldest first, each once
 * @param tornBefore pads found torn at the first service: over how long is not known, so they do not count
 * @param history pads found torn at every later service, with the years since the one before
 * @param rate what is believed after that history; the belief before it goes by the saliva
 * @param forecast to the next service, one year after the last
 */
public record PlayerForecast(String player, Optional<Saliva> saliva, List<LocalDate> services, int tornBefore,
		List<TornPads> history, TearRate rate, TearForecast forecast) {

	/** Probability that the interval holds the true number. */
	public static final double COVERAGE = 0.9;

	private static final double DAYS_IN_A_YEAR = 365.25;

	public PlayerForecast {
		services = List.copyOf(services);
		history = List.copyOf(history);
	}

	/** From all services of one player, at least one, oldest first. */
	static PlayerForecast of(List<PastService> services) {
		TreeMap<LocalDate, Integer> torn = new TreeMap<>();
		services.forEach(service -> torn.merge(service.date(), service.torn(), Integer::sum));
		List<TornPads> history = history(torn);
		Optional<Saliva> saliva = services.stream().flatMap(service -> service.saliva().stream())
				.reduce((older, newer) -> newer);
		TearRate prior = saliva.filter(Saliva.ACIDIC::equals).map(acidic -> TearRate.ACID_SALIVA)
				.orElse(TearRate.MOST_PLAYERS);
		TearRate rate = prior.after(history);
		return new PlayerForecast(services.get(0).player(), saliva, List.copyOf(torn.keySet()),
				torn.firstEntry().getValue(), history, rate, rate.forecast(1, COVERAGE));
	}

	private static List<TornPads> history(TreeMap<LocalDate, Integer> torn) {
		List<TornPads> history = new ArrayList<>();
		for (Map.Entry<LocalDate, Integer> later : torn.tailMap(torn.firstKey(), false).entrySet()) {
			long days = ChronoUnit.DAYS.between(torn.lowerKey(later.getKey()), later.getKey());
			history.add(new TornPads(later.getValue(), days / DAYS_IN_A_YEAR));
		}
		return history;
	}

	/** One year after the last. */
	public LocalDate nextService() {
		return services.get(services.size() - 1).plusYears(1);
	}

	/** Pads found torn over {@link #years}. */
	public int torn() {
		return history.stream().mapToInt(TornPads::torn).sum();
	}

	/** From the first service to the last. */
	public double years() {
		return ChronoUnit.DAYS.between(services.get(0), services.get(services.size() - 1)) / DAYS_IN_A_YEAR;
	}
}

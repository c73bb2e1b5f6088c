package padwright.workup.forecast;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import padwright.engine.forecast.TearForecast;
import padwright.engine.forecast.TearRate;
import padwright.engine.forecast.TornPads;
import padwright.model.plan.Saliva;

/**
 * How many pads of one player will tear, on all of the player's instruments, by the next yearly service of each (a yearly
 * clean-oil-adjust is common practice, no source). What tears on one instrument is counted over the years that it was
 * played: what its first service finds torn is of unknown age, whenever the others came. The belief before any history is
 * one instrument's.
 *
 * @param player name
 * @param saliva as the newest plan that says it has it; empty if none does
 * @param services the days of service, oldest first, each once
 * @param instruments how many the player has
 * @param tornBefore pads found torn at the first service of each: over how long is not known, so they do not count
 * @param history pads found torn at every later service of an instrument, with the years since its one before
 * @param rate pads a year of one instrument, as is believed after that history; the belief before goes by the saliva
 * @param forecast for a year of every instrument
 */
public record PlayerForecast(String player, Optional<Saliva> saliva, List<LocalDate> services, int instruments,
		int tornBefore, List<TornPads> history, TearRate rate, TearForecast forecast) {

	/** Probability that the interval holds the true number. */
	public static final double COVERAGE = 0.9;

	private static final double DAYS_IN_A_YEAR = 365.25;
	private static final int LONGEST_AHEAD = 100;

	public PlayerForecast {
		services = List.copyOf(services);
		history = List.copyOf(history);
	}

	/** From all services of one player, at least one, oldest first. */
	static PlayerForecast of(List<PastService> services) {
		Map<String, TreeMap<LocalDate, Integer>> instruments = new LinkedHashMap<>();
		services.forEach(service -> instruments.computeIfAbsent(service.instrument(), unseen -> new TreeMap<>())
				.merge(service.date(), service.torn(), Integer::sum));
		List<TornPads> history = instruments.values().stream().flatMap(torn -> history(torn).stream()).toList();
		Optional<Saliva> saliva = services.stream().flatMap(service -> service.saliva().stream())
				.reduce((older, newer) -> newer);
		TearRate prior = saliva.filter(Saliva.ACIDIC::equals).map(acidic -> TearRate.ACID_SALIVA)
				.orElse(TearRate.MOST_PLAYERS);
		TearRate rate = prior.after(history);
		return new PlayerForecast(services.get(0).player(), saliva,
				services.stream().map(PastService::date).distinct().toList(), instruments.size(),
				instruments.values().stream().mapToInt(torn -> torn.firstEntry().getValue()).sum(), history, rate,
				rate.forecast(Math.min(instruments.size(), LONGEST_AHEAD), COVERAGE));
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

	/** How long pads were in use between two services, the years of all instruments together. */
	public double years() {
		return history.stream().mapToDouble(TornPads::years).sum();
	}
}

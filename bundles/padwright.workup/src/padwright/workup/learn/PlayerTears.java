package padwright.workup.learn;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import padwright.engine.learning.GammaPool.Exposure;
import padwright.model.plan.Saliva;
import padwright.workup.learn.PlanFacts.Visit;

/**
 * How many pads each player tore, over the years between the first and the last service of each instrument. What the first
 * finds torn is of unknown age and does not count.
 */
final class PlayerTears {

	private static final double DAYS_IN_A_YEAR = 365.25;

	private final Map<String, TreeMap<LocalDate, Integer>> instruments = new LinkedHashMap<>();
	private Optional<Saliva> saliva = Optional.empty();

	private PlayerTears() {
	}

	/** Players that were seen for some time, by the saliva that their newest plan says. */
	static Map<Optional<Saliva>, List<Exposure>> bySaliva(Collection<PlanFacts> plans) {
		Map<String, PlayerTears> players = new TreeMap<>();
		plans.stream().flatMap(plan -> plan.visit().stream()).sorted(Comparator.comparing(Visit::date))
				.forEach(visit -> players.computeIfAbsent(visit.player(), unseen -> new PlayerTears()).add(visit));
		Map<Optional<Saliva>, List<Exposure>> bySaliva = new TreeMap<>(SalivaPhrase.ORDER);
		players.values().stream().filter(player -> player.years() > 0).forEach(player -> bySaliva.computeIfAbsent(
				player.saliva, unseen -> new ArrayList<>()).add(new Exposure(player.torn(), player.years())));
		return bySaliva;
	}

	private void add(Visit visit) {
		instruments.computeIfAbsent(visit.instrument(), unseen -> new TreeMap<>()).merge(visit.date(), visit.torn(),
				Integer::sum);
		saliva = visit.saliva().or(() -> saliva);
	}

	private int torn() {
		return instruments.values().stream().flatMap(torn -> torn.tailMap(torn.firstKey(), false).values().stream())
				.mapToInt(Integer::intValue).sum();
	}

	private double years() {
		return instruments.values().stream().mapToDouble(torn -> ChronoUnit.DAYS.between(torn.firstKey(), torn.lastKey()))
				.sum() / DAYS_IN_A_YEAR;
	}
}

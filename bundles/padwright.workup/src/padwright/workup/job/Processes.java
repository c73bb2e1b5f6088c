package padwright.workup.job;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.model.Resolved;
import padwright.model.stock.Process;
import padwright.model.stock.Stock;

/** The processes that plans of a stock can follow: its own, and those of the stocks that it is kept with. */
public final class Processes {

	private Processes() {
	}

	/** Of one name the nearest, the stock's own first. */
	public static List<Process> of(Stock stock) {
		Map<String, Process> byName = new LinkedHashMap<>();
		collect(stock, byName, new LinkedHashSet<>());
		return List.copyOf(byName.values());
	}

	private static void collect(Stock stock, Map<String, Process> byName, Set<Stock> seen) {
		if (Resolved.of(stock).isPresent() && seen.add(stock)) {
			stock.getProcesses().stream().filter(process -> process.getName() != null)
					.forEach(process -> byName.putIfAbsent(process.getName(), process));
			stock.getShared().forEach(shared -> collect(shared, byName, seen));
		}
	}
}

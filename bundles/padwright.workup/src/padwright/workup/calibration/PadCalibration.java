package padwright.workup.calibration;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import padwright.engine.calibration.Calibration;
import padwright.engine.calibration.CalibrationResult;
import padwright.engine.calibration.CalibrationRound;
import padwright.model.stock.Pad;
import padwright.model.stock.Stock;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/**
 * What the rounds of all keys with one pad article tell about its stiffness. A shop's own figure: it is written into
 * the stock by hand, once it is believed.
 *
 * @param article the pad by qualified name, as in {@code Bench.Felt}
 * @param label   of the pad
 * @param keys    how many keys gave rounds
 * @param rounds  how many rounds with pieces and readings before and after them were used
 * @param result  the stiffness, or why the readings cannot tell it
 */
public record PadCalibration(String article, String label, int keys, int rounds, CalibrationResult result) {

	/** The rounds of one article as they come together. */
	private static final class Pool {

		private final String label;
		private final Set<String> keys = new LinkedHashSet<>();
		private final List<CalibrationRound> rounds = new ArrayList<>();
		private final List<String> obstacles = new ArrayList<>();

		private Pool(String label) {
			this.label = label;
		}

		private Optional<PadCalibration> calibration(String article) {
			if (!rounds.isEmpty()) {
				return Optional.of(
						new PadCalibration(article, label, keys.size(), rounds.size(), Calibration.of(rounds)));
			}
			return obstacles.stream().findFirst()
					.map(why -> new PadCalibration(article, label, 0, 0, new CalibrationResult.Undecided(why)));
		}
	}

	/** One for each article that pieces were placed behind between two rounds, by qualified name. */
	public static List<PadCalibration> of(Collection<ServicePlan> plans) {
		Map<String, Pool> pools = new TreeMap<>();
		plans.stream().flatMap(plan -> plan.jobs().stream())
				.forEach(job -> job.fitting().pad().ifPresent(pad -> add(job, pad, pools)));
		return pools.entrySet().stream().flatMap(pool -> pool.getValue().calibration(pool.getKey()).stream()).toList();
	}

	private static void add(KeyJob job, Pad pad, Map<String, Pool> pools) {
		RoundsWithPieces rounds = RoundsWithPieces.of(job);
		Pool pool = pools.computeIfAbsent(article(pad), unseen -> new Pool(Labels.of(pad)));
		pool.rounds.addAll(rounds.usable());
		pool.obstacles.addAll(rounds.obstacles());
		if (!rounds.usable().isEmpty()) {
			pool.keys.add(job.plan().plan().getSerial() + " " + job.name());
		}
	}

	private static String article(Pad pad) {
		return (pad.eContainer() instanceof Stock stock ? stock.getName() + "." : "") + pad.getName();
	}
}

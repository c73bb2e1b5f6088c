package padwright.workup.calibration;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

import padwright.engine.calibration.Calibration;
import padwright.engine.calibration.CalibrationRound;
import padwright.model.stock.Pad;
import padwright.model.stock.Stock;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/**
 * What the rounds of all keys with one pad article tell about its stiffness. A shop's own figure: it is written into
 * the stock by hand, once it is believed.
 *
 * @param article the pad by qualified name, as in {@code Bench.Felt}
 * @param label   of the pad
 * @param keys    how many keys gave rounds
 * @param rounds  how many rounds with pieces and readings before and after them were used
 * @param stiffness the stiffness, or why the readings cannot tell it
 */
public record PadCalibration(String article, String label, int keys, int rounds, ToldStiffness stiffness) {

	/**
	 * With so many rounds the interval is far narrower than what differs from pad to pad, and every further one costs as
	 * much as the first.
	 */
	private static final int MOST_ROUNDS = 400;

	/** The rounds of one article as they come together. */
	private static final class Pool {

		private final String label;
		private final Set<String> keys = new LinkedHashSet<>();
		private final List<CalibrationRound> rounds = new ArrayList<>();
		private final List<Phrase> obstacles = new ArrayList<>();

		private Pool(String label) {
			this.label = label;
		}

		private void add(Evidence evidence) {
			rounds.addAll(evidence.rounds());
			obstacles.addAll(evidence.obstacles());
			if (!evidence.rounds().isEmpty()) {
				keys.add(evidence.key());
			}
		}

		/** All, or as many as are worth it, evenly spread over all. */
		private List<CalibrationRound> used() {
			int count = Math.min(MOST_ROUNDS, rounds.size());
			return IntStream.range(0, count).mapToObj(index -> rounds.get((int) ((long) index * rounds.size() / count)))
					.toList();
		}

		private Optional<PadCalibration> calibration(String article) {
			if (!rounds.isEmpty()) {
				List<CalibrationRound> used = used();
				return Optional.of(new PadCalibration(article, label, keys.size(), used.size(), ToldStiffness.of(Calibration.of(used))));
			}
			return obstacles.stream().findFirst()
					.map(why -> new PadCalibration(article, label, 0, 0, ToldStiffness.not(why)));
		}
	}

	/**
	 * What the rounds of one key tell.
	 *
	 * @param article the pad by qualified name
	 * @param label of the pad
	 * @param key told from all other keys
	 * @param rounds that can be used
	 * @param obstacles why others cannot
	 */
	public record Evidence(String article, String label, String key, List<CalibrationRound> rounds,
			List<Phrase> obstacles) {

		public Evidence {
			rounds = List.copyOf(rounds);
			obstacles = List.copyOf(obstacles);
		}
	}

	/** One for each article that pieces were placed behind between two rounds, by qualified name. */
	public static List<PadCalibration> of(Collection<ServicePlan> plans) {
		return pooled(plans.stream().flatMap(plan -> evidence(plan).stream()).toList());
	}

	/** As {@link #of(Collection)}, from what was gathered of each plan. */
	public static List<PadCalibration> pooled(Collection<Evidence> all) {
		Map<String, Pool> pools = new TreeMap<>();
		all.forEach(evidence -> pools.computeIfAbsent(evidence.article(), unseen -> new Pool(evidence.label()))
				.add(evidence));
		return pools.entrySet().stream().flatMap(pool -> pool.getValue().calibration(pool.getKey()).stream()).toList();
	}

	/** What one plan tells, key by key; nothing of keys behind whose pad no piece was placed. */
	public static List<Evidence> evidence(ServicePlan plan) {
		return plan.jobs().stream().flatMap(job -> job.fitting().pad().map(pad -> evidence(job, pad)).stream())
				.filter(evidence -> !evidence.rounds().isEmpty() || !evidence.obstacles().isEmpty()).toList();
	}

	private static Evidence evidence(KeyJob job, Pad pad) {
		RoundsWithPieces rounds = RoundsWithPieces.of(job);
		return new Evidence(article(pad), Labels.of(pad), job.plan().plan().getSerial() + " " + job.name(),
				rounds.usable(), rounds.obstacles());
	}

	private static String article(Pad pad) {
		return (pad.eContainer() instanceof Stock stock ? stock.getName() + "." : "") + pad.getName();
	}
}

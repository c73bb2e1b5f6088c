package padwright.workup.choose;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.model.stock.Pad;
import padwright.model.stock.Stock;
import padwright.workup.parts.Withdrawal;
import padwright.workup.service.ServicePlan;

/**
 * The choice of pads for a plan, from its instrument, the findings at cups and rims, the player and the climate, by the
 * preferences of the shop. Pads that were found sound stay, and their keys are left out.
 *
 * @param keys the pads for each key
 * @param set each kind of pad as one for all keys: those that go into most keys first, then the best ones
 * @param mixed the pad chosen for each key, see {@link MixedSet}
 */
public record PadChoice(ServicePlan plan, List<KeyChoice> keys, List<SetChoice> set, MixedSet mixed) {

	private static final Comparator<SetChoice> BEST =
			Comparator.comparing((SetChoice choice) -> choice.fitting().size()).thenComparing(SetChoice::weight).reversed();

	public PadChoice {
		keys = List.copyOf(keys);
		set = List.copyOf(set);
	}

	/** The choice; nothing where the plan names no stock. */
	public static Optional<PadChoice> of(ServicePlan plan) {
		return plan.stock().map(stock -> of(plan, stock));
	}

	private static PadChoice of(ServicePlan plan, Stock stock) {
		List<KeyChoice> keys = plan.jobs().stream().filter(job -> job.key().isPresent() && !Withdrawal.keepsPad(job))
				.map(job -> CandidatePads.of(stock, job)).toList();
		List<SetChoice> set = stock.getPads().stream().map(pad -> forAll(pad, keys)).sorted(BEST).toList();
		return new PadChoice(plan, keys, set, MixedSet.of(keys, set));
	}

	private static SetChoice forAll(Pad pad, List<KeyChoice> keys) {
		List<String> fitting = new ArrayList<>();
		Map<String, String> lacking = new LinkedHashMap<>();
		Map<Reason, List<String>> reasons = new LinkedHashMap<>();
		BigDecimal weight = BigDecimal.ZERO;
		for (KeyChoice key : keys) {
			Candidate here = key.of(pad).orElseThrow();
			if (here.fits()) {
				fitting.add(key.label());
				weight = weight.add(here.weight());
				here.reasons().forEach(reason -> reasons.computeIfAbsent(reason, any -> new ArrayList<>())
						.add(key.label()));
			} else {
				lacking.put(key.label(), here.hindrance().orElseThrow());
			}
		}
		return new SetChoice(pad, fitting, lacking, weight, heaviestFirst(reasons));
	}

	private static Map<Reason, List<String>> heaviestFirst(Map<Reason, List<String>> reasons) {
		Map<Reason, List<String>> sorted = new LinkedHashMap<>();
		reasons.entrySet().stream()
				.sorted(Comparator.comparing((Map.Entry<Reason, List<String>> entry) -> entry.getKey().weight().abs()
						.multiply(BigDecimal.valueOf(entry.getValue().size()))).reversed())
				.forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
		return sorted;
	}
}

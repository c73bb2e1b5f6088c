package padwright.engine.mechanism;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import padwright.engine.length.Length;

/**
 * A way from a finger to a key.
 *
 * @param first the key that the finger moves
 * @param links the links that are passed, none to the first key
 */
record Way(String first, List<KeyLink> links) {

	/** All ways that pass no key twice, through links that act while these keys are moved. */
	static List<Way> from(String first, Mechanism mechanism, Set<String> moved) {
		List<KeyLink> acting = mechanism.links().stream()
				.filter(link -> mechanism.leavesRest(link) && moved.contains(link.driver())
						&& moved.contains(link.driven())
						&& link.when().filter(on -> moved.contains(on.key()) != on.isMoved()).isEmpty())
				.toList();
		List<Way> ways = new ArrayList<>(List.of(new Way(first, List.of())));
		for (int i = 0; i < ways.size(); i++) {
			ways.addAll(ways.get(i).longer(acting));
		}
		return ways;
	}

	String last() {
		return links.isEmpty() ? first : links.get(links.size() - 1).driven();
	}

	/** Travel at the last key over travel at the first. */
	BigDecimal ratio() {
		return links.stream().map(KeyLink::ratio).reduce(BigDecimal.ONE, BigDecimal::multiply);
	}

	/** Each play over the product of the ratios before it; summed as one fraction and rounded once, half even. */
	Length lostMotion() {
		BigDecimal play = BigDecimal.ZERO;
		BigDecimal over = BigDecimal.ONE;
		for (KeyLink link : links) {
			play = play.add(BigDecimal.valueOf(link.play().nanometres())).multiply(link.ratio());
			over = over.multiply(link.ratio());
		}
		return new Length(play.divide(over, 0, RoundingMode.HALF_EVEN).longValueExact());
	}

	private List<Way> longer(List<KeyLink> acting) {
		return acting.stream().filter(link -> link.driver().equals(last()) && !passes(link.driven())).map(link -> {
			List<KeyLink> more = new ArrayList<>(links);
			more.add(link);
			return new Way(first, more);
		}).toList();
	}

	private boolean passes(String key) {
		return first.equals(key) || links.stream().anyMatch(link -> link.driven().equals(key));
	}
}

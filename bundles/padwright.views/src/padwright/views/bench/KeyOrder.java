package padwright.views.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.coupling.CircularCouplingException;
import padwright.model.plan.Round;
import padwright.workup.regulate.PlanCouplings;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** The keys of a plan in the order in which they are worked on: driven keys before those that drive them. */
public final class KeyOrder {

	private KeyOrder() {
	}

	/**
	 * The rows of a plan in the order of work; as they stand where keys close each other in a circle. Those of keys that the
	 * instrument does not have are left out.
	 */
	public static List<KeyJob> of(ServicePlan plan) {
		return inOrder(plan).stream().filter(row -> row.key().isPresent()).toList();
	}

	private static List<KeyJob> inOrder(ServicePlan plan) {
		try {
			return PlanCouplings.inOrderOfWork(plan);
		} catch (CircularCouplingException circle) {
			return plan.jobs();
		}
	}

	/** Where a row is in that order, from 0. */
	public static int place(KeyJob row) {
		return of(row.plan()).stream().map(KeyJob::name).toList().indexOf(row.name());
	}

	/** The key after a row (or, with a step of −1, before it); nothing at the end. */
	public static Optional<String> beside(KeyJob row, int step) {
		List<KeyJob> order = of(row.plan());
		int place = place(row) + step;
		return place < 0 || place >= order.size() ? Optional.empty() : Optional.of(order.get(place).name());
	}

	/** The next key with hours to be read: after the row, or else before it; nothing where all others are read. */
	public static Optional<String> nextToRead(KeyJob row) {
		List<KeyJob> order = of(row.plan());
		int place = place(row);
		return Stream.concat(order.stream().skip(place + 1L), order.stream().limit(Math.max(0, place)))
				.filter(KeyOrder::isToBeRead).map(KeyJob::name).findFirst();
	}

	private static boolean isToBeRead(KeyJob row) {
		Optional<Round> round = row.lastRound();
		return round.map(row::hours).orElse(row.plan().plan().getHours()).size() > round
				.map(last -> last.getReadings().size()).orElse(0);
	}
}

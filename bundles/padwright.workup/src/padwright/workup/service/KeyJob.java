package padwright.workup.service;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.plan.Fitting;
import padwright.model.plan.KeyService;
import padwright.model.plan.Round;
import padwright.model.stock.Pad;
import padwright.model.stock.StockedSize;
import padwright.model.systems.EffectiveKey;

/**
 * One row of a plan with all that it takes from the rest of the plan, the key system and the stock, as they are now: made
 * anew after an edit.
 */
public final class KeyJob {

	private final ServicePlan plan;
	private final KeyService service;
	private final EffectiveFitting fitting;
	private Optional<EffectiveKey> key;
	private Optional<StockedSize> padSize;
	private List<Length> emptyGaps;
	private List<Length> stack;
	private Length stackSum;

	KeyJob(ServicePlan plan, KeyService service) {
		this(plan, service, new EffectiveFitting(service.getFitting(), plan.plan().getFitting()));
	}

	private KeyJob(ServicePlan plan, KeyService service, EffectiveFitting fitting) {
		this.plan = plan;
		this.service = service;
		this.fitting = fitting;
	}

	/** The same row with something else in its cup, to see what would be. */
	public KeyJob fitted(Fitting trial) {
		return new KeyJob(plan, service, new EffectiveFitting(trial, plan.plan().getFitting()));
	}

	public ServicePlan plan() {
		return plan;
	}

	public KeyService service() {
		return service;
	}

	/** The key as it is in the plan's system; nothing for a key that it lacks. */
	public Optional<EffectiveKey> key() {
		if (key == null) {
			key = Resolved.of(service.getKey()).flatMap(plan.system()::key);
		}
		return key;
	}

	/** The stocked size of its pad that goes into its cup; nothing where there is none, or pad or cup are not known. */
	public Optional<StockedSize> padSize() {
		if (padSize == null) {
			padSize = fitting.pad().map(Pad::getDiameters)
					.flatMap(sizes -> key().flatMap(EffectiveKey::cupDiameter).flatMap(cup -> CupFit.diameter(sizes, cup)));
		}
		return padSize;
	}

	/** The key's name, or a question mark where the link is broken. */
	public String name() {
		return Resolved.of(service.getKey()).map(Key::getName).orElse("?");
	}

	public EffectiveFitting fitting() {
		return fitting;
	}

	/** Gaps from cup lip to rim without a pad; empty if not measured. */
	public List<Length> emptyGaps() {
		if (emptyGaps == null) {
			emptyGaps = Lengths.of(service.getEmpty());
		}
		return emptyGaps;
	}

	/** The full shims noted in the plan; empty if none are yet. */
	public List<Length> stack() {
		if (stack == null) {
			stack = Lengths.of(service.getStack());
		}
		return stack;
	}

	public Length stackSum() {
		if (stackSum == null) {
			stackSum = stack().stream().reduce(Length.ZERO, Length::plus);
		}
		return stackSum;
	}

	/** All rounds of readings, those as delivered last. */
	public List<Round> allRounds() {
		return Stream.concat(service.getRounds().stream(), Optional.ofNullable(service.getDelivered()).stream()).toList();
	}

	/** The newest round of readings before the key was delivered. */
	public Optional<Round> lastRound() {
		List<Round> rounds = service.getRounds();
		return rounds.isEmpty() ? Optional.empty() : Optional.of(rounds.get(rounds.size() - 1));
	}

	/** The hours of a round's readings: its own, or the plan's. */
	public List<ClockHour> hours(Round round) {
		return round.getHours().isEmpty() ? plan.plan().getHours() : round.getHours();
	}
}

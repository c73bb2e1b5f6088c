package padwright.workup.service;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.Range;
import padwright.model.plan.Plan;
import padwright.model.stock.Feeler;
import padwright.model.stock.Stock;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;

/**
 * A plan with all that it takes from its key system and stock, as far as they are there and as they were when first
 * asked: made anew after an edit.
 */
public final class ServicePlan {

	/** Widest gap that passes where a plan says nothing: half a thou (common practice, no source). */
	public static final Length DEFAULT_TOLERANCE = Length.thou("0.5");

	private final Plan plan;
	private final EffectiveSystem system;
	private final List<KeyJob> jobs;
	private Length tolerance;
	private Optional<Bed> bed;
	private List<Length> feelers;

	public ServicePlan(Plan plan) {
		this.plan = plan;
		this.system = EffectiveSystem.of(plan.getSystem());
		this.jobs = plan.getKeys().stream().map(service -> new KeyJob(this, service)).toList();
	}

	public Plan plan() {
		return plan;
	}

	public EffectiveSystem system() {
		return system;
	}

	public Optional<Stock> stock() {
		return Resolved.of(plan.getStock());
	}

	/** The rows of the plan, in its order. */
	public List<KeyJob> jobs() {
		return jobs;
	}

	/** The keys of the system for which the plan has no row, in the system's order. */
	public List<EffectiveKey> missingKeys() {
		return system.keys().stream()
				.filter(key -> jobs.stream().noneMatch(job -> job.service().getKey() == key.definition())).toList();
	}

	/** Widest gap between face and rim that passes, key lightly closed. */
	public Length tolerance() {
		if (tolerance == null) {
			tolerance = Lengths.of(plan.getTolerance(), plan).orElse(DEFAULT_TOLERANCE);
		}
		return tolerance;
	}

	/** Sums of full shims that are expected, if the plan says. */
	public Optional<Bed> bed() {
		if (bed == null) {
			bed = Optional.ofNullable(plan.getBed()).flatMap(this::bed);
		}
		return bed;
	}

	private Optional<Bed> bed(Range range) {
		LengthUnit unit = Lengths.unit(plan.getBedUnit(), plan);
		return Lengths.exact(range.low(), unit)
				.flatMap(low -> Lengths.exact(range.high(), unit).map(high -> new Bed(low, high)));
	}

	/** The stock's feeler leaves, finest first, each thickness once. */
	public List<Length> feelers() {
		if (feelers == null) {
			feelers = stock().map(Stock::getFeelers).stream().flatMap(List<Feeler>::stream)
					.flatMap(feeler -> Lengths.of(feeler.getThickness(), feeler).stream())
					.distinct().sorted(Comparator.naturalOrder()).toList();
		}
		return feelers;
	}
}

package padwright.workup.regulate;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import padwright.engine.coupling.Adjuster;
import padwright.engine.coupling.Coupling;
import padwright.engine.coupling.CouplingGraph;
import padwright.engine.coupling.Screw;
import padwright.engine.film.FilmSupply;
import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.systems.EffectiveKey;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.FilmStore;

/** The couplings of a plan's key system, with the plan's film for the adjusters that take film. */
public final class PlanCouplings {

	private final ServicePlan plan;
	private final List<FilmSupply> films;

	private PlanCouplings(ServicePlan plan) {
		this.plan = plan;
		this.films = Optional.ofNullable(plan.plan().getFitting())
				.flatMap(fitting -> Resolved.of(fitting.getFilms())).map(set -> FilmStore.of(set).supply())
				.orElse(List.of());
	}

	/**
	 * All keys of the system and their couplings. Couplings that a check reports as wrong are left out, but not circles.
	 *
	 * @throws padwright.engine.coupling.CircularCouplingException if keys close each other in a circle
	 */
	public static CouplingGraph graph(ServicePlan plan) {
		return new PlanCouplings(plan).graph();
	}

	/** The rows of a plan in the order of work: driven keys before their drivers, else as in the plan. */
	public static List<KeyJob> inOrderOfWork(ServicePlan plan) {
		List<String> order = graph(plan).orderOfWork();
		return plan.jobs().stream()
				.sorted(Comparator.comparingInt(job -> order.indexOf(job.name()))).toList();
	}

	private CouplingGraph graph() {
		Map<String, Coupling> couplings = new LinkedHashMap<>();
		for (EffectiveKey driver : plan.system().keys()) {
			for (var coupling : driver.closes()) {
				driven(coupling).filter(driven -> !driven.equals(driver.name())).ifPresent(driven -> couplings
						.putIfAbsent(driver.name() + ">" + driven, coupling(driver.name(), driven, coupling)));
			}
		}
		return new CouplingGraph(namesInPlanOrder(), List.copyOf(couplings.values()));
	}

	private Optional<String> driven(padwright.model.keysystem.Coupling coupling) {
		return Resolved.of(coupling.getDriven()).filter(key -> plan.system().key(key).isPresent()).map(Key::getName);
	}

	/** Keys with a row first, as in the plan; then the others, as in the system. */
	private List<String> namesInPlanOrder() {
		Set<String> names = new LinkedHashSet<>();
		plan.jobs().stream().filter(job -> job.key().isPresent()).map(KeyJob::name).forEach(names::add);
		plan.system().keys().stream().map(EffectiveKey::name).forEach(names::add);
		return List.copyOf(names);
	}

	private Coupling coupling(String driver, String driven, padwright.model.keysystem.Coupling coupling) {
		padwright.model.keysystem.Adjuster adjuster = coupling.getAdjuster();
		BigDecimal ratio = Optional.ofNullable(coupling.getRatio()).filter(known -> known.signum() > 0)
				.orElse(BigDecimal.ONE);
		return new Coupling(driver, driven, adjuster == null ? Adjuster.film(films) : adjuster(adjuster), ratio);
	}

	private Adjuster adjuster(padwright.model.keysystem.Adjuster adjuster) {
		return switch (adjuster.getKind()) {
		case SCREW -> screw(adjuster).orElseGet(() -> Adjuster.film(films));
		case CORK -> Adjuster.cork(films);
		case FELT -> Adjuster.felt(films);
		case FILM -> Adjuster.film(films);
		};
	}

	private static Optional<Adjuster> screw(padwright.model.keysystem.Adjuster adjuster) {
		if (adjuster.getThread() != null) {
			return Threads.named(adjuster.getThread()).map(Adjuster::screw);
		}
		Optional<Length> pitch = Lengths.of(adjuster.getPitch(), adjuster).filter(length -> length.signum() > 0);
		return pitch.map(Screw::new);
	}
}

package padwright.views.regulate;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.coupling.Adjuster;
import padwright.engine.coupling.Bumper;
import padwright.engine.coupling.CircularCouplingException;
import padwright.engine.coupling.Coupling;
import padwright.engine.coupling.Regulation;
import padwright.engine.coupling.Screw;
import padwright.engine.coupling.Upset;
import padwright.model.systems.EffectiveKey;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.workup.regulate.AdjustmentWords;
import padwright.workup.regulate.RegulationStep;
import padwright.workup.regulate.RegulationWork;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.words.GapWords;
import padwright.workup.words.LengthWords;

/**
 * All that the list of couplings shows.
 *
 * @param rows in the order of work
 * @param note what stands in the way of an order, or what the predictions rest on; may be empty
 */
public record RegulationState(List<RegulationRow> rows, String note) {

	public RegulationState {
		rows = List.copyOf(rows);
	}

	public static RegulationState empty() {
		return new RegulationState(List.of(), "");
	}

	/**
	 * The couplings of a solved plan. To solve takes its time: not for the window's thread.
	 *
	 * @see padwright.workup.solve.PlanSolver#solve(ServicePlan, padwright.workup.solve.WrittenAnswers,
	 *      java.util.function.Consumer)
	 */
	public static RegulationState of(PlanSolution solution) {
		try {
			RegulationWork work = RegulationWork.of(solution);
			String note = work.upsets().isEmpty() ? "" : Messages.of("regulate.model");
			return new RegulationState(work.steps().stream().map(step -> row(work, step)).toList(), note);
		} catch (CircularCouplingException circle) {
			return new RegulationState(List.of(), Messages.of("regulate.circle",
					String.join(" > ", circle.keys()) + " > " + circle.keys().get(0)));
		}
	}

	private static RegulationRow row(RegulationWork work, RegulationStep step) {
		Coupling coupling = step.coupling();
		String upset = work.upsets().stream().filter(each -> isAt(each, coupling))
				.map(each -> Messages.of("regulate.light", GapWords.about(each.light()), label(work, each.lightAt())))
				.collect(Collectors.joining(", "));
		return new RegulationRow(coupling.toString(), coupling.driver(),
				Messages.of("regulate.pair", label(work, coupling.driver()), label(work, coupling.driven())),
				adjuster(coupling.adjuster()), step.found().map(found -> found(work, found)).orElse(""),
				step.found().map(Regulation::adjustment).map(AdjustmentWords::of)
						.orElseGet(() -> Messages.of("regulate.feel")), upset);
	}

	private static boolean isAt(Upset upset, Coupling coupling) {
		return upset.driver().equals(coupling.driver())
				&& (upset.isAtDriver() || upset.lightAt().equals(coupling.driven()));
	}

	private static String found(RegulationWork work, Regulation found) {
		String at = found.side() == Regulation.Side.DRIVER ? found.coupling().driver() : found.coupling().driven();
		return Messages.of("regulate.light", LengthWords.withUnit(found.light()), label(work, at));
	}

	private static String adjuster(Adjuster adjuster) {
		if (adjuster instanceof Screw screw) {
			return Messages.of("regulate.screw", Figures.millimetres(screw.pitch()));
		}
		return adjuster instanceof Bumper bumper
				? Messages.of("regulate." + bumper.material().name().toLowerCase(Locale.ROOT)) : "";
	}

	private static String label(RegulationWork work, String key) {
		Optional<EffectiveKey> known = work.plan().system().keys().stream()
				.filter(each -> each.name().equals(key)).findFirst();
		return known.map(EffectiveKey::label).orElse(key);
	}
}

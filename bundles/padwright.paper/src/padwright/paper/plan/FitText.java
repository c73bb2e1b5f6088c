package padwright.paper.plan;

import java.util.Optional;

import padwright.model.Present;
import padwright.model.plan.Fitting;

/** What is fitted, in words. */
final class FitText {

	private FitText() {
	}

	/** As in {@code engineered pad on 20 thou disc, polyester film, Shellac}. */
	static String of(Fitting fitting) {
		StringBuilder text = new StringBuilder();
		Present.of(fitting.getPad()).ifPresent(pad -> text.append(PlanBenchCard.label(pad)));
		Present.of(fitting.getStabiliser()).ifPresent(disc -> text.append(" on ").append(PlanBenchCard.label(disc)));
		Present.of(fitting.getFilms()).ifPresent(films -> text.append(", ").append(PlanBenchCard.label(films)));
		Present.of(fitting.getAdhesive()).ifPresent(glue -> text.append(", ").append(PlanBenchCard.label(glue)));
		return text.toString();
	}

	/** The same for a key's own fitting; empty where it has none. */
	static String of(Optional<Fitting> own) {
		return own.map(FitText::of).orElse("");
	}
}

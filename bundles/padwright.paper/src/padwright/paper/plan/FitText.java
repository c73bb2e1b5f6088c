package padwright.paper.plan;

import java.util.Optional;

import padwright.model.Present;
import padwright.model.plan.Fitting;
import padwright.workup.parts.Labels;

/** What is fitted, in words. */
final class FitText {

	private FitText() {
	}

	/** As in {@code engineered pad on 20 thou disc, polyester film, Shellac}. */
	static String of(Fitting fitting) {
		StringBuilder text = new StringBuilder();
		Present.of(fitting.getPad()).ifPresent(pad -> text.append(Labels.of(pad)));
		Present.of(fitting.getStabiliser()).ifPresent(disc -> text.append(" on ").append(Labels.of(disc)));
		Present.of(fitting.getFilms()).ifPresent(films -> text.append(", ").append(Labels.of(films)));
		Present.of(fitting.getAdhesive()).ifPresent(glue -> text.append(", ").append(Labels.of(glue)));
		return text.toString();
	}

	/** The same for a key's own fitting; empty where it has none. */
	static String of(Optional<Fitting> own) {
		return own.map(FitText::of).orElse("");
	}
}

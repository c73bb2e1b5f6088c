package padwright.workup.learn;

import padwright.model.plan.Saliva;
import padwright.workup.words.Messages;

/** Saliva in the language in which the program speaks. */
final class SalivaWords {

	private SalivaWords() {
	}

	static String of(Saliva saliva) {
		return switch (saliva) {
		case MILD -> Messages.of("report.saliva.mild");
		case ACIDIC -> Messages.of("report.saliva.acidic");
		};
	}
}

package padwright.workup.learn;

import java.util.Comparator;
import java.util.Optional;

import padwright.model.plan.Saliva;
import padwright.workup.words.Phrase;

/** Saliva of players, those of whom it is not said last. */
final class SalivaPhrase {

	static final Comparator<Optional<Saliva>> ORDER = Comparator
			.comparingInt(saliva -> saliva.map(Saliva::ordinal).orElse(Integer.MAX_VALUE));

	private SalivaPhrase() {
	}

	static Phrase of(Optional<Saliva> said) {
		return said.map(saliva -> switch (saliva) {
		case MILD -> Phrase.of("report.saliva.mild");
		case ACIDIC -> Phrase.of("report.saliva.acidic");
		}).orElseGet(() -> Phrase.of("learn.unsaid"));
	}
}

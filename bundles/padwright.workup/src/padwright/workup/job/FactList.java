package padwright.workup.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;

import padwright.engine.clock.ClockHour;
import padwright.model.Lengths;
import padwright.model.Measure;
import padwright.workup.words.Days;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Messages;
import padwright.workup.words.Terms;
import padwright.workup.words.Texts;

/** Facts about one thing, as far as they are said. */
final class FactList {

	private final List<String> facts = new ArrayList<>();

	/** As in {@code Spring D♯: steel, replaced}. */
	String behind(String thing) {
		return facts.isEmpty() ? thing : thing + ": " + String.join(", ", facts);
	}

	void add(String fact) {
		if (fact != null && !fact.isBlank()) {
			facts.add(fact);
		}
	}

	void add(Enumerator word) {
		add(Terms.of(word));
	}

	void add(boolean isSo, String key) {
		if (isSo) {
			add(Messages.of(key));
		}
	}

	void addLength(Measure measure, EObject of) {
		Lengths.of(measure, of).ifPresent(length -> add(LengthWords.exact(length)));
	}

	/** @param key of the words around the length */
	void addLength(Measure measure, EObject of, String key) {
		Lengths.of(measure, of).ifPresent(length -> add(Messages.of(key, LengthWords.exact(length))));
	}

	/** A size, which is told in mm whatever unit is shown. */
	void addMillimetres(Measure measure, EObject of, int decimals, String key) {
		Lengths.of(measure, of).ifPresent(length -> add(Messages.of(key, LengthWords.millimetres(length, decimals))));
	}

	/** @param key of the words around the figure */
	void addFigure(BigDecimal figure, String key) {
		if (figure != null) {
			add(Messages.of(key, figure(figure), figure));
		}
	}

	void addDay(LocalDate day, String key) {
		if (day != null) {
			add(Messages.of(key, Days.of(day)));
		}
	}

	void addHours(List<ClockHour> hours) {
		if (!hours.isEmpty()) {
			add(Messages.of("job.at", hours.stream().map(ClockHour::toString).collect(Collectors.joining(" "))));
		}
	}

	static String figure(BigDecimal figure) {
		return Texts.decimal(figure.toPlainString());
	}
}

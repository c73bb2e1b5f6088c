package padwright.workup.learn;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import padwright.engine.learning.Learned;
import padwright.engine.learning.Settling;
import padwright.workup.learn.LearnedFigure.Topic;
import padwright.workup.learn.PlanFacts.FeltGap;
import padwright.workup.learn.PlanFacts.PadSeen;
import padwright.workup.words.Phrase;

/** How gaps of new pads changed until a look in their first weeks, by article and instrument. */
final class FirstWeeks {

	private static final int FIRST_DAY = 7;
	private static final int LAST_DAY = 84;
	/** An interval wider than the finest leaf tells nothing, thou. */
	private static final double WIDEST = 0.5;

	private final Map<String, Map<String, List<Double>>> changes = new TreeMap<>();

	/** Counts a pad that stayed and was felt again in its first weeks. */
	void look(String article, String instrument, LocalDate fitted, List<FeltGap> left, PadSeen pad, LocalDate today) {
		long days = ChronoUnit.DAYS.between(fitted, today);
		if (pad.isNew() || days < FIRST_DAY || days > LAST_DAY) {
			return;
		}
		for (FeltGap found : pad.found()) {
			left.stream().filter(gap -> gap.hour().equals(found.hour())).findFirst().ifPresent(gap -> changes
					.computeIfAbsent(article, unseen -> new TreeMap<>()).computeIfAbsent(instrument, unseen -> new ArrayList<>())
					.add(found.gap() - gap.gap()));
		}
	}

	List<LearnedFigure> figures() {
		return changes.entrySet().stream().map(article -> figure(article.getKey(), article.getValue())).toList();
	}

	private static LearnedFigure figure(String article, Map<String, List<Double>> instruments) {
		Phrase evidence = Phrase.of("learn.settled", instruments.values().stream().mapToInt(List::size).sum(),
				instruments.size());
		Optional<Learned> settled = Settling.of(List.copyOf(instruments.values()));
		if (settled.isEmpty()) {
			return new LearnedFigure(Topic.SETTLING, Phrase.plain(article), settled, Phrase.of("learn.fewSettled", evidence));
		}
		return settled.get().high() - settled.get().low() > WIDEST
				? new LearnedFigure(Topic.SETTLING, Phrase.plain(article), Optional.empty(), Phrase.of("learn.tooWide", evidence))
				: new LearnedFigure(Topic.SETTLING, Phrase.plain(article), settled, evidence);
	}
}

package padwright.workup.choose;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.stock.Pad;
import padwright.workup.parts.Article;

/**
 * A pad for each key: that of the set, and another one where it is better there or the set's cannot go in. No pad is
 * given away twice: keys come in the plan's order, and who comes when the stock has no more takes the next best.
 *
 * @param main the kind that is best for the set; empty where the stock has no pad
 * @param byKey the candidate for each key; without those for which nothing in stock fits
 */
public record MixedSet(Optional<Pad> main, Map<KeyChoice, Candidate> byKey) {

	public MixedSet {
		byKey = new LinkedHashMap<>(byKey);
	}

	static MixedSet of(List<KeyChoice> keys, List<SetChoice> set) {
		Optional<Pad> main = set.stream().findFirst().map(SetChoice::pad);
		Map<Article, Integer> taken = new HashMap<>();
		Map<KeyChoice, Candidate> chosen = new LinkedHashMap<>();
		for (KeyChoice key : keys) {
			best(key, main, taken).ifPresent(candidate -> {
				taken.merge(article(candidate), 1, Integer::sum);
				chosen.put(key, candidate);
			});
		}
		return new MixedSet(main, chosen);
	}

	/** The best that is left; that of the set where it is as good. */
	private static Optional<Candidate> best(KeyChoice key, Optional<Pad> main, Map<Article, Integer> taken) {
		List<Candidate> left = key.candidates().stream().filter(Candidate::fits)
				.filter(candidate -> isLeft(article(candidate), taken)).toList();
		Optional<Candidate> first = left.stream().findFirst();
		return left.stream().filter(candidate -> main.filter(candidate.pad()::equals).isPresent())
				.filter(same -> same.weight().compareTo(first.orElseThrow().weight()) == 0).findFirst().or(() -> first);
	}

	private static Article article(Candidate candidate) {
		return new Article(candidate.pad(), candidate.diameter());
	}

	/** What the stock does not count is always there. */
	private static boolean isLeft(Article article, Map<Article, Integer> taken) {
		Optional<Length> size = article.size();
		return size.isEmpty() || article.onHand().filter(count -> count <= taken.getOrDefault(article, 0)).isEmpty();
	}

	/** The keys whose pad is not that of the set. */
	public List<KeyChoice> differing() {
		return byKey.entrySet().stream().filter(entry -> main.filter(entry.getValue().pad()::equals).isEmpty())
				.map(Map.Entry::getKey).toList();
	}
}

package padwright.paper.card;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import padwright.paper.page.PageFact;

/**
 * Everything that a bench card says about one instrument and one plan. Names no customer.
 *
 * @param title of the document, as in {@code Bench card}
 * @param instrument what lies on the bench
 * @param serial its number; empty if it has none
 * @param planName of the plan
 * @param date of the plan, if it has one
 * @param facts short statements for the head of the card: system, stock, seat tolerance, bed, default pads
 * @param twelveLooksAt what 12 o'clock looks at, as in {@code hinge}
 * @param keys in the order of work
 * @param regulations in the order of work
 * @param diary what was found and done so far, a line each
 * @param cautions for the materials and steps named, each a sentence or two
 */
public record BenchCard(String title, String instrument, String serial, String planName, Optional<LocalDate> date,
		List<PageFact> facts, String twelveLooksAt, List<CardKey> keys, List<CardRegulation> regulations,
		List<DiaryLine> diary, List<String> cautions) {

	/**
	 * A line of the diary.
	 *
	 * @param when its day and hand, as far as said
	 */
	public record DiaryLine(String when, String words) {
	}

	/** @throws IllegalArgumentException if there is no key */
	public BenchCard {
		facts = List.copyOf(facts);
		keys = List.copyOf(keys);
		regulations = List.copyOf(regulations);
		diary = List.copyOf(diary);
		cautions = List.copyOf(cautions);
		if (keys.isEmpty()) {
			throw new IllegalArgumentException("a bench card without keys says nothing");
		}
	}
}

package padwright.workup.learn;

import java.util.Optional;

import padwright.engine.learning.Learned;
import padwright.workup.words.Phrase;

/**
 * A figure that a shop's plans tell, or do not.
 *
 * @param topic what kind of figure
 * @param of the group it is of
 * @param figure empty where the plans cannot tell it
 * @param evidence from how much it comes; why it is not told where it is not
 */
public record LearnedFigure(Topic topic, Phrase of, Optional<Learned> figure, Phrase evidence) {

	/** An interval whose ends lie further apart than this tells nothing. */
	private static final double WIDEST = 30;

	/** A figure, unless its interval is too wide to tell it. */
	static LearnedFigure of(Topic topic, Phrase group, Learned figure, Phrase evidence) {
		return figure.high() > WIDEST * figure.low()
				? new LearnedFigure(topic, group, Optional.empty(), Phrase.of("learn.tooWide", evidence))
				: new LearnedFigure(topic, group, Optional.of(figure), evidence);
	}

	/** What kinds of figures there are. */
	public enum Topic {
		/** How finely a hand feels, thou. */
		FEEL,
		/** Gap at an hour as first felt, thou, by condition of rim and cup. */
		ROUGHNESS,
		/** Stiffness of a pad article, 0 to 1. */
		STIFFNESS,
		/** Change of the gap at an hour in the first weeks, thou, by article. */
		SETTLING,
		/** Pads that were left level and found open, a pad and year, by article. */
		OPENING,
		/** Years until half of the pads of an article are torn, by saliva. */
		LIFE,
		/** The same, drawn toward the lives of the others. */
		POOLED_LIFE,
		/** Pads torn a year on one instrument, by saliva. */
		TEARING
	}
}

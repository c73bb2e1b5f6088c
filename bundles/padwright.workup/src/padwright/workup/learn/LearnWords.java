package padwright.workup.learn;

import java.util.Locale;

import padwright.engine.learning.Learned;
import padwright.engine.length.LengthUnit;
import padwright.workup.words.Messages;
import padwright.workup.words.ShownUnit;
import padwright.workup.words.Texts;

/** Learned figures in words. */
public final class LearnWords {

	private LearnWords() {
	}

	/** What a figure is, with its unit. */
	public static String topic(LearnedFigure.Topic topic) {
		return switch (topic) {
		case FEEL -> Messages.of("learn.topic.feel", ShownUnit.symbol());
		case ROUGHNESS -> Messages.of("learn.topic.roughness", ShownUnit.symbol());
		case STIFFNESS -> Messages.of("learn.topic.stiffness");
		case SETTLING -> Messages.of("learn.topic.settling", ShownUnit.symbol());
		case OPENING -> Messages.of("learn.topic.opening");
		case LIFE -> Messages.of("learn.topic.life");
		case POOLED_LIFE -> Messages.of("learn.topic.pooledLife");
		case TEARING -> Messages.of("learn.topic.tearing");
		};
	}

	/** As in {@code 0.12 (0.1 to 0.14)}, in the unit that {@link #topic} says. */
	public static String range(LearnedFigure.Topic topic, Learned learned) {
		double unit = switch (topic) {
		case FEEL, ROUGHNESS, SETTLING -> (double) LengthUnit.THOU.nanometres() / ShownUnit.now().nanometres();
		case STIFFNESS, OPENING, LIFE, POOLED_LIFE, TEARING -> 1;
		};
		return Messages.of("report.history.range", figure(unit * learned.middle()), figure(unit * learned.low()),
				figure(unit * learned.high()));
	}

	private static String figure(double value) {
		return Texts.decimal(String.format(Locale.ROOT, Math.abs(value) < 0.1 ? "%.2g" : "%.2f", value));
	}
}

package padwright.workup.learn;

import java.util.Locale;

import padwright.engine.learning.Learned;
import padwright.workup.words.Messages;

/** Learned figures in words. */
public final class LearnWords {

	private LearnWords() {
	}

	/** What a figure is, with its unit. */
	public static String topic(LearnedFigure.Topic topic) {
		return switch (topic) {
		case FEEL -> Messages.of("learn.topic.feel");
		case ROUGHNESS -> Messages.of("learn.topic.roughness");
		case STIFFNESS -> Messages.of("learn.topic.stiffness");
		case SETTLING -> Messages.of("learn.topic.settling");
		case OPENING -> Messages.of("learn.topic.opening");
		case LIFE -> Messages.of("learn.topic.life");
		case POOLED_LIFE -> Messages.of("learn.topic.pooledLife");
		case TEARING -> Messages.of("learn.topic.tearing");
		};
	}

	/** As in {@code 0.12 (0.1 to 0.14)}. */
	public static String range(Learned learned) {
		return Messages.of("report.history.range", figure(learned.middle()), figure(learned.low()), figure(learned.high()));
	}

	private static String figure(double value) {
		return String.format(Locale.ROOT, Math.abs(value) < 0.1 ? "%.2g" : "%.2f", value);
	}
}

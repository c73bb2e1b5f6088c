package padwright.workup.learn;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

import padwright.engine.learning.Learned;
import padwright.workup.learn.LearnedFigure.Topic;
import padwright.workup.words.Messages;

/**
 * A stock of learned figures as text, each with its interval and its evidence. What a stock has a word for is said in that
 * word, so that the shop can use it as it is; the rest are remarks to read.
 */
public final class LearnedStock {

	private LearnedStock() {
	}

	public static String text(ShopLearning learning, LocalDate day) {
		StringBuilder text = new StringBuilder("// ").append(Messages.of("learn.head", learning.plans(), day)).append("\n\n")
				.append("stock Learned {\n");
		feel(learning).ifPresent(feel -> text.append("\tlevelling {\n\t\tfeel ").append(figure(feel)).append(" thou\n\t}\n"));
		learning.figures().forEach(figure -> text.append("\t// ").append(line(figure)).append('\n'));
		return text.append("}\n").toString();
	}

	/** The figure of the finest leaves, which is the first. */
	private static Optional<Learned> feel(ShopLearning learning) {
		return learning.figures().stream().filter(figure -> figure.topic() == Topic.FEEL)
				.flatMap(figure -> figure.figure().stream()).findFirst();
	}

	private static String figure(Learned learned) {
		return String.format(Locale.ROOT, "%.2f", learned.middle());
	}

	private static String line(LearnedFigure figure) {
		return LearnWords.topic(figure.topic()) + ", " + figure.of() + ": " + figure.figure()
				.map(learned -> LearnWords.range(figure.topic(), learned)).map(range -> range + "; " + figure.evidence())
				.orElse(Messages.of("learn.notTold", figure.evidence()));
	}
}

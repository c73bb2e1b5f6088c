package padwright.language.fuzz;

import java.util.List;
import java.util.SplittableRandom;

import org.eclipse.xtext.IGrammarAccess;

import padwright.language.Examples;
import padwright.language.TestShop;

/**
 * A document that may hold anything.
 *
 * @param name with one of the three extensions
 */
record FuzzCase(String name, String text) {

	private static final List<String> EXTENSIONS = List.of("keys", "stock", "plan");
	private static final List<String> EXAMPLES = Examples.documents(Examples.TEMPLATES).stream().map(Examples::text).toList();

	/** The same for the same number. */
	static FuzzCase of(long number) {
		SplittableRandom random = new SplittableRandom(number);
		return new FuzzCase("fuzz." + EXTENSIONS.get(random.nextInt(EXTENSIONS.size())), text(random));
	}

	private static String text(SplittableRandom random) {
		String written = new GrammarWords(TestShop.LANGUAGE.getInstance(IGrammarAccess.class).getGrammar(), random)
				.document();
		String example = EXAMPLES.get(random.nextInt(EXAMPLES.size()));
		return switch (random.nextInt(4)) {
		case 0 -> written;
		case 1 -> new Spoiling(random).of(written);
		default -> new Spoiling(random).of(example);
		};
	}
}

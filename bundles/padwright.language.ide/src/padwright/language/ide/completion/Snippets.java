package padwright.language.ide.completion;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;

import padwright.workup.words.Texts;

/**
 * All snippets. Each is a line in {@code snippets.properties}, which says what it is called, and a file of that name,
 * whose first line says {@code in} which rules of the grammar it stands; the rest is its text.
 */
final class Snippets {

	private static final Texts LABELS = Texts.beside(Snippets.class, "snippets");
	private static final String IN = "in ";
	private static final List<Snippet> ALL = LABELS.keys().stream().sorted().map(Snippets::read).toList();

	private Snippets() {
	}

	static List<Snippet> all() {
		return ALL;
	}

	/** Those that begin with a word where the grammar has it. */
	static Stream<Snippet> at(Keyword place) {
		String rule = GrammarUtil.containingRule(place).getName();
		return ALL.stream().filter(snippet -> snippet.word().equals(place.getValue()))
				.filter(snippet -> snippet.rules().contains(rule));
	}

	/** What a snippet is called, in the language of the user. */
	static String label(String name) {
		return LABELS.of(name);
	}

	private static Snippet read(String name) {
		String[] parts = text(name).split("\n", 2);
		if (!parts[0].startsWith(IN) || parts.length < 2) {
			throw new IllegalArgumentException("snippet " + name + " does not begin with a line that says " + IN
					+ "which rules it stands");
		}
		return new Snippet(name, List.of(parts[0].substring(IN.length()).split(", ")), parts[1].stripTrailing());
	}

	private static String text(String name) {
		try (InputStream file = Snippets.class.getResourceAsStream("snippets/" + name + ".txt")) {
			if (file == null) {
				throw new IllegalArgumentException("snippet " + name + " has no text");
			}
			return new String(file.readAllBytes(), StandardCharsets.UTF_8).replace("\r", "");
		} catch (IOException broken) {
			throw new UncheckedIOException(broken);
		}
	}
}

package padwright.language.merge;

import java.util.List;

import org.eclipse.xtext.nodemodel.ICompositeNode;

/**
 * A part of a document that is known again in another copy of it.
 *
 * @param id by what it is known again among its siblings, such as {@code KeyService Fs}
 * @param start from 0
 * @param end behind its last character
 * @param parts of it that are known again in turn
 */
public record Stretch(String id, int start, int end, List<Stretch> parts) {

	public Stretch {
		parts = List.copyOf(parts);
	}

	/** The elements of a document, with the statements of each. */
	public static List<Stretch> of(ICompositeNode document) {
		return ElementClauses.of(document).stream().filter(element -> element.node() != null)
				.map(element -> new Stretch(element.key(), element.start(), element.end(), statements(element)))
				.toList();
	}

	private static List<Stretch> statements(ElementClauses.Clause element) {
		return ElementClauses.of(element.node()).stream().filter(statement -> statement.node() != null)
				.map(statement -> new Stretch(statement.key(), statement.start(), statement.end(), List.of())).toList();
	}
}

package padwright.language.merge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.xtext.nodemodel.ICompositeNode;

import padwright.language.merge.ElementClauses.Clause;

/**
 * Divides a document into its parts: systems, stocks and plans; in each its head, statements and end; in each statement
 * its clauses.
 */
final class Parts {

	private static final String END = "end";

	private final String text;
	private final Set<String> single;

	/** @param single the kinds of element of which no copy has more than one: that is the same one, whatever its name */
	private Parts(String text, Set<String> single) {
		this.text = text;
		this.single = single;
	}

	/** The whole document as one part. */
	static Part of(ICompositeNode document, String text, Set<String> single) {
		Parts parts = new Parts(text, single);
		List<Clause> elements = new ArrayList<>(ElementClauses.of(document));
		elements.add(new Clause(END, Integer.MAX_VALUE, text.length(), text.length(), null));
		return new Part("document", 0, "", text, "", parts.divide(elements, 0, text.length(), parts::element), true);
	}

	private interface Division {
		Part of(Part whole, Clause clause);
	}

	private Part element(Part whole, Clause clause) {
		if (clause.node() == null) {
			return whole;
		}
		String kind = Identity.kind(clause.node().getSemanticElement());
		List<Part> statements = divide(ElementClauses.withHead(ElementClauses.of(clause.node())), clause.start(), clause.end(),
				this::statement);
		return new Part(single.contains(kind) ? kind : whole.key(), whole.rank(), whole.lead(), whole.body(),
				whole.tail(), statements, true);
	}

	private Part statement(Part whole, Clause clause) {
		if (clause.node() == null) {
			return whole;
		}
		List<Part> clauses = divide(ElementClauses.of(clause.node()), clause.start(), clause.end(), (part, inner) -> part);
		return new Part(whole.key(), whole.rank(), whole.lead(), whole.body(), whole.tail(), clauses, false);
	}

	private List<Part> divide(List<Clause> clauses, int from, int to, Division division) {
		Map<String, Integer> seen = new HashMap<>();
		List<Part> parts = new ArrayList<>();
		int lead = from;
		for (int index = 0; index < clauses.size(); index++) {
			Clause clause = clauses.get(index);
			int next = index + 1 < clauses.size() ? clauses.get(index + 1).start() : to;
			int tail = clause.end() + commentBehind(text.substring(clause.end(), next));
			int count = seen.merge(clause.key(), 1, Integer::sum);
			Part whole = new Part(count == 1 ? clause.key() : clause.key() + " " + count, clause.rank(),
					text.substring(lead, clause.start()), text.substring(clause.start(), clause.end()),
					text.substring(clause.end(), tail), List.of(), false);
			parts.add(division.of(whole, clause));
			lead = tail;
		}
		return parts;
	}

	/** How much of the gap before the next part is a comment that goes on the line. */
	private static int commentBehind(String gap) {
		int lineEnd = 0;
		while (lineEnd < gap.length() && gap.charAt(lineEnd) != '\n' && gap.charAt(lineEnd) != '\r') {
			lineEnd++;
		}
		return gap.substring(0, lineEnd).isBlank() ? 0 : lineEnd;
	}
}

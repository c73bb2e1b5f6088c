package padwright.exchange.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import padwright.exchange.tree.Branch;
import padwright.exchange.tree.ExchangeException;
import padwright.exchange.tree.Leaf;
import padwright.exchange.tree.Listing;
import padwright.exchange.tree.Tree;
import padwright.workup.words.FormerWords;

/** Documents of the form that earlier versions wrote, in which a backing disc had another name and a key was its touch. */
final class FormerForm {

	static final String NAME = "padwright/1";
	private static final Map<String, String> RENAMED = Map.of("stabilisers", "backings", "stabiliser", "backing",
			"needsStabiliser", "needsBacking");
	/** Parts whose values are words of the language. */
	private static final Set<String> WORDS = Set.of("kind", "style");
	/** Parts of a key that have become several things, so that no renaming helps. */
	private static final Set<String> DIVIDED = Set.of("couplings", "uncoupled");

	private FormerForm() {
	}

	/**
	 * The same in today's names.
	 *
	 * @throws ExchangeException if it tells of couplings as they were, which no longer say enough
	 */
	static Branch renewed(Branch branch) throws ExchangeException {
		Map<String, Tree> parts = new LinkedHashMap<>();
		for (Map.Entry<String, Tree> part : branch.parts().entrySet()) {
			if (DIVIDED.contains(part.getKey())) {
				throw new ExchangeException(part.getValue().line(), "\"" + part.getKey() + "\" is of the form \"" + NAME
						+ "\", in which a key was its own touch; write touches, and \"closes\", \"opens\" or \"holds\" at"
						+ " the key, and begin with \"" + JsonExchange.FORM + "\": \"" + JsonExchange.THIS_FORM + "\"");
			}
			String name = RENAMED.getOrDefault(part.getKey(), part.getKey());
			if (parts.put(name, WORDS.contains(name) ? word(part.getValue()) : renewed(part.getValue())) != null) {
				throw new ExchangeException(part.getValue().line(), "\"" + name + "\" is said twice; take one away");
			}
		}
		return new Branch(parts, branch.line());
	}

	private static Tree renewed(Tree tree) throws ExchangeException {
		if (tree instanceof Branch branch) {
			return renewed(branch);
		}
		if (!(tree instanceof Listing listing)) {
			return tree;
		}
		List<Tree> parts = new ArrayList<>();
		for (Tree part : listing.parts()) {
			parts.add(renewed(part));
		}
		return new Listing(parts, listing.line());
	}

	private static Tree word(Tree tree) {
		return tree instanceof Leaf leaf
				? new Leaf(FormerWords.now(leaf.text()).orElse(leaf.text()), leaf.syntax(), leaf.line()) : tree;
	}
}

package padwright.exchange.json;

import java.util.LinkedHashMap;
import java.util.Map;

import padwright.exchange.tree.Branch;
import padwright.exchange.tree.ExchangeException;
import padwright.exchange.tree.Leaf;
import padwright.exchange.tree.Tree;

/** Documents as JSON: the tree of the model, with the form it has. {@code exchange.schema.json} describes it. */
public final class JsonExchange {

	/** Says which form a file has. */
	public static final String FORM = "format";
	/** The form that is written. */
	public static final String THIS_FORM = "padwright/2";
	/** The schema, beside this class. */
	public static final String SCHEMA = "exchange.schema.json";

	private JsonExchange() {
	}

	/** The JSON text of a document. */
	public static String write(Branch document) {
		Map<String, Tree> parts = new LinkedHashMap<>();
		parts.put(FORM, Leaf.string(THIS_FORM));
		parts.putAll(document.parts());
		return JsonText.write(new Branch(parts, 0));
	}

	/**
	 * The tree of a document, in today's names if it is of the form before.
	 *
	 * @throws ExchangeException if the text is not JSON or of another form
	 */
	public static Branch read(String text) throws ExchangeException {
		if (!(JsonText.read(text) instanceof Branch document)) {
			throw new ExchangeException(1, "a document is an object; begin with {");
		}
		Map<String, Tree> parts = new LinkedHashMap<>(document.parts());
		String form = parts.remove(FORM) instanceof Leaf leaf ? leaf.text() : "";
		Branch content = new Branch(parts, document.line());
		return switch (form) {
		case THIS_FORM -> content;
		case FormerForm.NAME -> FormerForm.renewed(content);
		default -> throw new ExchangeException(document.line(),
				"this is not of a form that is known; it should begin with \"" + FORM + "\": \"" + THIS_FORM + "\"");
		};
	}
}

package padwright.exchange.json;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;

import padwright.exchange.tree.Branch;
import padwright.exchange.tree.ExchangeException;
import padwright.exchange.tree.Leaf;
import padwright.exchange.tree.Leaf.Syntax;
import padwright.exchange.tree.Listing;
import padwright.exchange.tree.Tree;

/** Trees as JSON text. */
final class JsonText {

	/** Where a reader of the library says that it is. */
	private static final Pattern PLACE = Pattern.compile(" at line (\\d+) column \\d+ path \\S+");

	private static final String FOR_PROGRAMMERS = "Use JsonReader";

	private final JsonReader reader;

	private JsonText(String text) {
		reader = new JsonReader(new StringReader(text));
		reader.setStrictness(Strictness.STRICT);
	}

	/** @throws ExchangeException if the text is not JSON, says something twice or has a null */
	static Tree read(String text) throws ExchangeException {
		JsonText json = new JsonText(text);
		try {
			Tree tree = json.tree();
			json.reader.peek();
			return tree;
		} catch (IOException malformed) {
			throw new ExchangeException(json.line(malformed.getMessage()),
					"this is not JSON: " + inOurWords(PLACE.matcher(malformed.getMessage()).replaceAll("")));
		}
	}

	private static String inOurWords(String message) {
		return message.startsWith(FOR_PROGRAMMERS)
				? "something is out of place, or a comma, colon, quote or bracket is missing"
				: message.lines().findFirst().orElse(message);
	}

	private int line() {
		return line(reader.toString());
	}

	private int line(String message) {
		Matcher place = PLACE.matcher(message);
		return place.find() ? Integer.parseInt(place.group(1)) : 0;
	}

	private Tree tree() throws IOException, ExchangeException {
		JsonToken token = reader.peek();
		int line = line();
		return switch (token) {
		case BEGIN_OBJECT -> branch(line);
		case BEGIN_ARRAY -> listing(line);
		case STRING -> new Leaf(reader.nextString(), Syntax.STRING, line);
		case NUMBER -> new Leaf(reader.nextString(), Syntax.NUMBER, line);
		case BOOLEAN -> new Leaf(String.valueOf(reader.nextBoolean()), Syntax.TRUTH, line);
		default -> throw new ExchangeException(line, "null says nothing; leave the part out");
		};
	}

	private Tree branch(int line) throws IOException, ExchangeException {
		Map<String, Tree> parts = new LinkedHashMap<>();
		reader.beginObject();
		while (reader.hasNext()) {
			String name = reader.nextName();
			if (parts.put(name, tree()) != null) {
				throw new ExchangeException(line(), "\"" + name + "\" is said twice; take one away");
			}
		}
		reader.endObject();
		return new Branch(parts, line);
	}

	private Tree listing(int line) throws IOException, ExchangeException {
		List<Tree> parts = new ArrayList<>();
		reader.beginArray();
		while (reader.hasNext()) {
			parts.add(tree());
		}
		reader.endArray();
		return new Listing(parts, line);
	}

	/** Indented, with a line end behind the last line. */
	static String write(Tree tree) {
		return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(element(tree)) + "\n";
	}

	private static JsonElement element(Tree tree) {
		if (tree instanceof Branch branch) {
			JsonObject object = new JsonObject();
			branch.parts().forEach((name, part) -> object.add(name, element(part)));
			return object;
		}
		if (tree instanceof Listing listing) {
			JsonArray array = new JsonArray();
			listing.parts().forEach(part -> array.add(element(part)));
			return array;
		}
		return primitive((Leaf) tree);
	}

	private static JsonPrimitive primitive(Leaf leaf) {
		return switch (leaf.syntax()) {
		case NUMBER -> new JsonPrimitive(Integer.valueOf(leaf.text()));
		case TRUTH -> new JsonPrimitive(Boolean.valueOf(leaf.text()));
		case STRING, CELL -> new JsonPrimitive(leaf.text());
		};
	}
}

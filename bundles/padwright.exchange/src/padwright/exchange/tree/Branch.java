package padwright.exchange.tree;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Named parts, in order.
 */
public record Branch(Map<String, Tree> parts, int line) implements Tree {

	public Branch {
		parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
	}

	@Override
	public String kind() {
		return "an object";
	}
}

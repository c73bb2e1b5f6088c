package padwright.exchange.tree;

import java.util.List;

/** Parts without names, in order. */
public record Listing(List<Tree> parts, int line) implements Tree {

	public Listing {
		parts = List.copyOf(parts);
	}

	@Override
	public String kind() {
		return "a list";
	}
}

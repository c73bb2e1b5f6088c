package padwright.paper.page;

import java.util.List;

import padwright.drawing.scene.Element;

/** A part that is always the same. */
public record FixedPart(double height, List<Element> elements) implements Part {

	public FixedPart {
		elements = List.copyOf(elements);
	}

	@Override
	public boolean stretches() {
		return false;
	}

	@Override
	public List<Element> draw(double asked) {
		return elements;
	}
}

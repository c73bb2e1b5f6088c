package padwright.drawing.scene;

import java.util.List;
import java.util.Optional;

/**
 * Elements that belong together.
 *
 * @param id names the group to whoever points at it; empty for none
 * @param tooltip what to say to whoever points at it; empty for nothing
 * @param transform from the coordinates of the elements to those around the group
 * @param elements in drawing order
 */
public record Group(Optional<String> id, Optional<String> tooltip, Transform transform, List<Element> elements)
		implements Element {

	public Group {
		elements = List.copyOf(elements);
	}

	/** A group without a name. */
	public static Group of(List<? extends Element> elements) {
		return new Group(Optional.empty(), Optional.empty(), Transform.NONE, List.copyOf(elements));
	}

	/** A group that can be pointed at. */
	public static Group named(String id, String tooltip, List<? extends Element> elements) {
		return new Group(Optional.of(id), Optional.of(tooltip), Transform.NONE, List.copyOf(elements));
	}

	/** This group moved. */
	public Group at(double x, double y) {
		return new Group(id, tooltip, Transform.translation(x, y).after(transform), elements);
	}

	@Override
	public void accept(ElementVisitor visitor) {
		visitor.visit(this);
	}
}

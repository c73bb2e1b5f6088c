package padwright.views.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.model.keysystem.KeySystem;

/**
 * A key system as the layout editor shows it. Nothing changes it later: after an edit it is made anew.
 *
 * @param system that is drawn; nothing where there is none
 * @param joints from the upper end down, at least one
 * @param items in the order of the system, holes first, so that cups lie over them
 * @param fault what is wrong with the text that came after the one that is drawn; then nothing can be changed
 */
public record Layout(Optional<KeySystem> system, List<LayoutJoint> joints, List<LayoutItem> items,
		List<LayoutLink> links, Optional<String> fault) {

	public Layout {
		joints = List.copyOf(joints);
		items = List.copyOf(items);
		links = List.copyOf(links);
	}

	/** Where no system is open. */
	public static Layout empty() {
		return new Layout(Optional.empty(), List.of(), List.of(), List.of(), Optional.empty());
	}

	/** A system with all that it inherits. */
	public static Layout of(KeySystem system) {
		return LayoutReading.read(system);
	}

	/** This drawing, kept while its text cannot be read. */
	public Layout with(String wrong) {
		return new Layout(system, joints, items, links, Optional.of(wrong));
	}

	public boolean isEditable() {
		return system.isPresent() && fault.isEmpty();
	}

	public Optional<LayoutItem> item(String id) {
		return items.stream().filter(item -> item.id().equals(id)).findFirst();
	}

	/** With some items where they are being dragged to. */
	Layout moved(List<LayoutItem> dragged) {
		List<LayoutItem> all = new ArrayList<>(items);
		all.replaceAll(item -> dragged.stream().filter(each -> each.id().equals(item.id())).findFirst().orElse(item));
		return new Layout(system, joints, all, links, fault);
	}

	/** The length of the whole tube. */
	public Length length() {
		return joints.isEmpty() ? Length.ZERO : joints.get(joints.size() - 1).end();
	}

	double widest() {
		return joints.stream().mapToDouble(LayoutJoint::widest).max().orElse(LayoutJoint.USUAL_BORE);
	}

	/** The joint at a place: the last that begins there or above, the first for what lies above all. */
	public LayoutJoint jointAt(Length along) {
		return joints.stream().filter(joint -> !joint.start().isLongerThan(along)).reduce((upper, lower) -> lower)
				.orElse(joints.get(0));
	}
}

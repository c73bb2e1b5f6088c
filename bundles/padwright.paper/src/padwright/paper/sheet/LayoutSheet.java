package padwright.paper.sheet;

import java.util.List;
import java.util.Optional;

import padwright.paper.page.HeadText;

/**
 * A key system as its maker documents it.
 *
 * @param head of the pages
 * @param title of the document
 * @param twelveLooksAt what 12 o'clock looks at
 * @param keys in the order of the system; their number on the sheet is their place in it, from 1
 * @param couplings by driver
 * @param joints from the upper end down
 * @param tables what else is told, before the fingerings
 * @param touches names of all touches, in the order of the system
 * @param holes from the upper end down
 * @param notes in the order of the system
 */
public record LayoutSheet(HeadText head, String title, String twelveLooksAt, List<SheetKey> keys,
		List<SheetCoupling> couplings, List<SheetJoint> joints, List<SheetRod> rods,
		List<SheetFingerHole> fingerHoles, List<SheetList> tables, List<String> touches,
		List<SheetHole> holes, List<SheetNote> notes) {

	/** @throws IllegalArgumentException if there is neither a key nor a hole */
	public LayoutSheet {
		keys = List.copyOf(keys);
		couplings = List.copyOf(couplings);
		joints = List.copyOf(joints);
		rods = List.copyOf(rods);
		fingerHoles = List.copyOf(fingerHoles);
		tables = List.copyOf(tables);
		touches = List.copyOf(touches);
		holes = List.copyOf(holes);
		notes = List.copyOf(notes);
		if (keys.isEmpty() && fingerHoles.isEmpty()) {
			throw new IllegalArgumentException("a layout without keys and holes says nothing");
		}
	}

	/** Those of the system; without any, all keys are on one tube. */
	List<SheetJoint> drawnJoints() {
		return joints.isEmpty()
				? List.of(new SheetJoint("", Optional.empty(), Optional.empty(), List.of(), Optional.empty())) : joints;
	}
}

package padwright.views.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.language.edit.SizeEdits;
import padwright.language.edit.TextEdit;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveJoint.Width;
import padwright.model.systems.EffectiveSystem;
import padwright.views.layout.LayoutJoint;

/** A size of a section as edits of its text. */
record HoleSectionTexts(HoleSection section) {

	List<TextEdit> put(HoleSize size, Length length) {
		KeySystem system = section.layout().system().orElseThrow();
		if (size == HoleSize.BORE) {
			return bore(system, length);
		}
		boolean isOfHole = size == HoleSize.HOLE || size == HoleSize.RIM || size == HoleSize.CHIMNEY;
		Titled thing = isOfHole ? section.hole() : section.item().thing();
		Length diameter = section.sizes().get(isOfHole ? HoleSize.HOLE : HoleSize.CUP).length();
		return new SizeEdits(system).put(thing, size.part(), length, diameter);
	}

	/** A bore that is the same everywhere stays so; a tapering one gets a point where the hole is. */
	private List<TextEdit> bore(KeySystem system, Length length) {
		Length along = section.item().along().orElseThrow();
		LayoutJoint here = section.layout().jointAt(along);
		Joint joint = here.joint().orElseThrow();
		List<Width> said = EffectiveSystem.of(system).joint(joint).map(EffectiveJoint::bore).orElse(List.of());
		List<Width> bore = new ArrayList<>();
		if (said.size() < 2) {
			bore.add(new Width(said.stream().findFirst().flatMap(Width::position), length));
		} else {
			Optional<Length> at = Optional.of(along.minus(here.start()));
			said.stream().filter(width -> !width.position().equals(at)).forEach(bore::add);
			bore.add(new Width(at, length));
			bore.sort(Comparator.comparing(width -> width.position().orElse(Length.ZERO)));
		}
		return new SizeEdits(system).bore(joint, bore);
	}
}

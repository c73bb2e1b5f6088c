package padwright.language.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveJoint.Width;

/** Writes single sizes into the text of a key system. What is inherited is changed in this system. */
public final class SizeEdits {

	private final SystemEdits edits;
	private final SystemWords words;

	public SizeEdits(KeySystem system) {
		edits = new SystemEdits(system);
		words = new SystemWords(system);
	}

	/**
	 * Makes a size of a hole or key that long.
	 *
	 * @param diameter of the part that has it, which has to be said where nothing is said of the part here
	 */
	public List<TextEdit> put(Titled thing, PartSize size, Length value, Length diameter) {
		Optional<String> part = size.part(thing);
		if (part.isEmpty()) {
			return edits.put(thing, Map.of(size.feature(), size.written(words.length(value))));
		}
		return edits.written(thing).flatMap(statement -> part(statement, part.get()))
				.map(there -> field(there, size).edit(words.length(value)))
				.orElseGet(() -> edits.put(thing, Map.of(part.get(), begun(thing, size, value, diameter))));
	}

	private static Optional<EObject> part(EObject statement, String part) {
		return Optional.ofNullable((EObject) statement.eGet(statement.eClass().getEStructuralFeature(part)));
	}

	private static ElementField field(EObject part, PartSize size) {
		return ElementFields.of(part).stream().filter(field -> field.feature().getName().equals(size.feature()))
				.findFirst().orElseThrow();
	}

	private String begun(Titled thing, PartSize size, Length value, Length diameter) {
		return size.begin(thing, size.isDiameter() ? words.length(value)
				: words.length(diameter) + " " + size.written(words.length(value)));
	}

	/** Makes the bore of a joint that wide, from its upper end down. */
	public List<TextEdit> bore(Joint joint, List<Width> widths) {
		String said = widths.stream().map(this::point).collect(Collectors.joining(", "));
		return edits.put(joint, Map.of("bore", "bore " + said));
	}

	private String point(Width width) {
		return words.length(width.diameter()) + width.position().map(at -> " at " + words.length(at)).orElse("");
	}
}

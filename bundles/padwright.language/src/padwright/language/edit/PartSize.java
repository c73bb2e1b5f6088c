package padwright.language.edit;

import java.util.Optional;

import padwright.model.keysystem.Hole;
import padwright.model.keysystem.Titled;

/** A size of a hole, a cup or a key that a drawing can change. */
public enum PartSize {
	HOLE("hole", "diameter", ""),
	RIM("hole", "rimWidth", "rim"),
	CHIMNEY("hole", "chimney", "chimney"),
	CUP("cup", "diameter", ""),
	DEPTH("cup", "depth", "deep"),
	RISE("", "rise", "rise"),
	ARM("", "arm", "arm");

	private final String part;
	private final String feature;
	private final String word;

	PartSize(String part, String feature, String word) {
		this.part = part;
		this.feature = feature;
		this.word = word;
	}

	/** The feature that says it, of the part or of the thing itself. */
	String feature() {
		return feature;
	}

	/** With the word that leads to it, if there is one. */
	String written(String length) {
		return word.isEmpty() ? length : word + " " + length;
	}

	boolean isDiameter() {
		return feature.equals("diameter");
	}

	/** What of a thing has it; nothing where the thing itself does. */
	Optional<String> part(Titled thing) {
		return part.isEmpty() ? Optional.empty() : Optional.of(thing instanceof Hole ? "size" : part);
	}

	/** A part from its beginning: a hole of its own begins with its diameter, those of a key with a word. */
	String begin(Titled thing, String sizes) {
		return thing instanceof Hole ? sizes : part + " " + sizes;
	}
}

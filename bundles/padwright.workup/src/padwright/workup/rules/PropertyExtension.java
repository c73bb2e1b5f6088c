package padwright.workup.rules;

/**
 * Adds properties that rules can ask about. Found by its entry in
 * {@code META-INF/services/padwright.workup.rules.PropertyExtension} of an extension; it has a public constructor without
 * parameters. A name that is taken already keeps its meaning.
 */
public interface PropertyExtension {

	/** Adds its properties; each is asked of a key that may be half typed: missing values and broken links. */
	void addTo(PropertyList list);
}

package padwright.views.layout;

import java.util.Locale;

import padwright.model.keysystem.KeySystem;
import padwright.model.systems.Merged;
import padwright.views.Messages;

/** Where something of a system comes from. */
public enum LayoutOrigin {
	/** The system defines it. */
	OWN,
	/** The system changes what it inherits. */
	CHANGED,
	/** As in the system that this one is based on. */
	INHERITED;

	/** Where a part comes from, seen from a system that has it. */
	public static LayoutOrigin of(Merged<?, ?> part, KeySystem system) {
		return part.definition().eContainer() == system ? OWN
				: part.features().get(0).eContainer() == system ? CHANGED : INHERITED;
	}

	public String inWords() {
		return Messages.of("layout.origin." + name().toLowerCase(Locale.ROOT));
	}
}

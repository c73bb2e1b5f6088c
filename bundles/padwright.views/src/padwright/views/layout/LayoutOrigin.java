package padwright.views.layout;

import java.util.Locale;

import padwright.views.Messages;

/** Where something of a system comes from. */
public enum LayoutOrigin {
	/** The system defines it. */
	OWN,
	/** The system changes what it inherits. */
	CHANGED,
	/** As in the system that this one is based on. */
	INHERITED;

	String inWords() {
		return Messages.of("layout.origin." + name().toLowerCase(Locale.ROOT));
	}
}

package padwright.workup.parts;

import padwright.model.keysystem.Titled;

/** What things are called on paper. */
public final class Labels {

	private Labels() {
	}

	/** The label, or the name where there is none. */
	public static String of(Titled titled) {
		return titled.getLabel() == null ? titled.getName() : titled.getLabel();
	}
}

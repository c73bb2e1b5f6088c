package padwright.workbench.menus;

import java.util.Optional;

/** How the parameter of a command names what an extension adds, apart from the program's own. */
public final class AddedNames {

	private static final String ADDED = "added:";

	private AddedNames() {
	}

	static String parameter(String name) {
		return ADDED + name;
	}

	/** The name of what an extension adds; nothing for what is the program's own. */
	public static Optional<String> of(String parameter) {
		return Optional.of(parameter).filter(value -> value.startsWith(ADDED)).map(value -> value.substring(ADDED.length()));
	}
}

package padwright.commands;

import java.io.PrintWriter;
import java.util.Map;

import padwright.workup.extensions.Added;
import padwright.workup.extensions.Extensions;
import padwright.workup.extensions.NamedExtension;

/** What extensions add of one kind, for a command that is asked for one of them by its name. */
record AddedByName<T extends NamedExtension>(String kind, Map<String, Added<T>> byName) {

	/** @param word what one of the kind is called, for messages */
	static <T extends NamedExtension> AddedByName<T> of(String word, Class<T> kind) {
		return new AddedByName<>(word, Extensions.installed().byName(kind));
	}

	/** @throws InputException if no extension adds one of this name */
	Added<T> get(String name) {
		if (byName.containsKey(name)) {
			return byName.get(name);
		}
		throw new InputException(byName.isEmpty() ? "no extension adds a " + kind
				: "no extension adds a " + kind + " '" + name + "'; there is " + String.join(", ", byName.keySet()));
	}

	/** One a line, with its title. */
	void list(PrintWriter out) {
		byName.forEach((name, added) -> out.println(
				name + "  " + Extensions.installed().ask(added, added.thing()::title, "")));
		if (byName.isEmpty()) {
			out.println("no extension adds a " + kind);
		}
		out.flush();
	}
}

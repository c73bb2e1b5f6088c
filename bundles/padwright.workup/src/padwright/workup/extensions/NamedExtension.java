package padwright.workup.extensions;

/** Something of others that the user asks for by its name. */
public interface NamedExtension {

	/** As it is called by commands: one word. */
	String name();

	/** As a menu has it, in the language of the user. */
	String title();
}

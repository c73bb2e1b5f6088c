package padwright.commands;

/** A command whose answer is a paper for people: in the language of the machine, unless another one is asked for. */
interface DrawsPaper {

	/** Whether it draws with these options; known once they are parsed. */
	default boolean draws() {
		return true;
	}
}

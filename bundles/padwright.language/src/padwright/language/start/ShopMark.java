package padwright.language.start;

/** What is in the file that marks the top of a shop folder. */
public final class ShopMark {

	public static final String TEXT =
			"This file marks the top of a shop folder: the files below may name each other.\n";

	private ShopMark() {
	}
}

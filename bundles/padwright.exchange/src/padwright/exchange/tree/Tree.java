package padwright.exchange.tree;

/** Content of a document without its types, as JSON and tables have it. */
public sealed interface Tree permits Leaf, Branch, Listing {

	/** Where it begins in the file it was read from, from 1; 0 where it was not read from one. */
	int line();

	/** What it is called in messages. */
	String kind();
}

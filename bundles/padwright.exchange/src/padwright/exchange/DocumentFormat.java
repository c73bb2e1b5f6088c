package padwright.exchange;

import padwright.exchange.tree.ExchangeException;
import padwright.model.plan.Document;
import padwright.workup.extensions.NamedExtension;

/**
 * A format of others that documents are exchanged in. Found by its entry in
 * {@code META-INF/services/padwright.exchange.DocumentFormat} of an extension; it has a public constructor without parameters. Its name
 * is what its files end with, without the dot. It is called in many threads.
 */
public interface DocumentFormat extends NamedExtension {

	/**
	 * A document in this format.
	 *
	 * @throws ExchangeException in the user's words, if it cannot be written
	 */
	String write(Document document) throws ExchangeException;

	/**
	 * A document of this format, as text of the language.
	 *
	 * @throws ExchangeException in the user's words, with the line, if it cannot be read
	 */
	Imported read(String content) throws ExchangeException;
}

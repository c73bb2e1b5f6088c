package padwright.exchange;

import com.google.inject.Inject;

import padwright.exchange.csv.CsvExchange;
import padwright.exchange.json.JsonExchange;
import padwright.exchange.text.DocumentText;
import padwright.exchange.tree.Branch;
import padwright.exchange.tree.ExchangeException;
import padwright.exchange.tree.ModelToTree;
import padwright.exchange.tree.TreeToModel;
import padwright.exchange.xmi.XmiExchange;
import padwright.model.plan.Document;
import padwright.model.plan.PlanPackage;

/** Documents to other formats and back. */
public final class Exchange {

	@Inject
	private ModelToTree trees;

	@Inject
	private DocumentText texts;

	/**
	 * A document in another format.
	 *
	 * @throws ExchangeException if it names something that is nowhere, in XMI
	 */
	public String write(Document document, Format format) throws ExchangeException {
		return switch (format) {
		case JSON -> JsonExchange.write(trees.tree(document));
		case CSV -> CsvExchange.write(trees.tree(document));
		case XMI -> XmiExchange.write(document);
		};
	}

	/**
	 * A document of another format as text of the language.
	 *
	 * @throws ExchangeException if it is not of the format, or says what the language cannot
	 */
	public Imported read(String content, Format format) throws ExchangeException {
		try {
			Document document = (Document) TreeToModel.model(PlanPackage.Literals.DOCUMENT, tree(content, format));
			if (document.eContents().isEmpty()) {
				throw new ExchangeException("it holds no key system, stock or plan");
			}
			return new Imported(texts.of(document), Imported.extension(document));
		} catch (StackOverflowError tooDeep) {
			throw new ExchangeException("it is nested too deeply; take parts apart");
		}
	}

	private Branch tree(String content, Format format) throws ExchangeException {
		return switch (format) {
		case JSON -> JsonExchange.read(content);
		case CSV -> CsvExchange.read(content);
		case XMI -> trees.tree(XmiExchange.read(content));
		};
	}
}

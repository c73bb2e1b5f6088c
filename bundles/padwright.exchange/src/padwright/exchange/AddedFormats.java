package padwright.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import padwright.engine.length.LengthUnit;
import padwright.exchange.readings.KeyReadings;
import padwright.exchange.readings.ReadingsFormat;
import padwright.exchange.tree.ExchangeException;
import padwright.model.plan.Document;
import padwright.workup.extensions.Added;
import padwright.workup.extensions.Extensions;
import padwright.workup.extensions.Extensions.Question;

/** The formats of extensions, each of which may fail. */
public final class AddedFormats {

	private final Extensions extensions;
	private final Map<String, Added<DocumentFormat>> documents;
	private final Map<String, Added<ReadingsFormat>> readings;

	AddedFormats(Extensions extensions) {
		this.extensions = extensions;
		documents = extensions.byName(DocumentFormat.class);
		readings = extensions.byName(ReadingsFormat.class);
	}

	/** Those of the extensions that this process uses. */
	public static AddedFormats installed() {
		return new AddedFormats(Extensions.installed());
	}

	/** The names of those for documents. */
	public Set<String> documents() {
		return documents.keySet();
	}

	/** The names of those for readings. */
	public Set<String> readings() {
		return readings.keySet();
	}

	/**
	 * A document in the format of a name.
	 *
	 * @throws ExchangeException if the format refuses it, or fails
	 */
	public String write(Document document, String name) throws ExchangeException {
		Added<DocumentFormat> format = documents.get(name);
		return answer(format, () -> format.thing().write(document));
	}

	/**
	 * A document of the format of a name, as text of the language.
	 *
	 * @throws ExchangeException if the format refuses it, or fails
	 */
	public Imported read(String content, String name) throws ExchangeException {
		Added<DocumentFormat> format = documents.get(name);
		return answer(format, () -> format.thing().read(content));
	}

	/**
	 * Readings of the format of a name.
	 *
	 * @throws ExchangeException if the format refuses them, or fails
	 */
	public List<KeyReadings> readings(String content, String name, Optional<LengthUnit> unit) throws ExchangeException {
		Added<ReadingsFormat> format = readings.get(name);
		return answer(format, () -> format.thing().read(content, unit));
	}

	private <T> T answer(Added<?> format, Question<T, ExchangeException> question) throws ExchangeException {
		return extensions.answer(format, ExchangeException.class, question)
				.orElseThrow(() -> new ExchangeException("the extension that knows this format failed"));
	}
}

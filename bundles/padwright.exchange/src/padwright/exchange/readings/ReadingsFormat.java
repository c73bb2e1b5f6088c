package padwright.exchange.readings;

import java.util.List;
import java.util.Optional;

import padwright.engine.length.LengthUnit;
import padwright.exchange.tree.ExchangeException;
import padwright.workup.extensions.NamedExtension;

/**
 * What a measuring instrument writes, for the readings of a plan: a source of an extension, found by its entry in
 * {@code META-INF/services/padwright.exchange.readings.ReadingsFormat}; it has a public constructor without parameters.
 */
public interface ReadingsFormat extends NamedExtension {

	/**
	 * The readings by key, in the order of the file.
	 *
	 * @param unit of figures that have none
	 * @throws ExchangeException in the user's words, with the line, if a reading cannot be understood, or there is none
	 */
	List<KeyReadings> read(String content, Optional<LengthUnit> unit) throws ExchangeException;
}

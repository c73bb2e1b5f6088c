package padwright.exchange.readings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.exchange.readings.MeasuredLength.Unit;
import padwright.model.Lengths;

/** A line that a digital indicator sends, such as {@code 0.0135}, {@code +0.34 mm} or {@code 12,7}. */
public final class IndicatorLine {

	private IndicatorLine() {
	}

	/**
	 * The length that a line tells, cut to whole nanometres; below zero where the indicator says so.
	 *
	 * @param usual the unit where none stands behind the figure
	 * @return nothing for what is no figure, has a unit that is none, or is longer than anything on an instrument
	 */
	public static Optional<Length> of(String line, LengthUnit usual) {
		Matcher figure = MeasuredLength.FIGURE.matcher(line.strip());
		if (line.length() > MeasuredLength.LONGEST || !figure.matches()) {
			return Optional.empty();
		}
		Optional<Unit> unit = figure.group(2).isEmpty() ? Optional.of(new Unit(usual, 1)) : MeasuredLength.unit(figure.group(2));
		return unit.map(one -> new BigDecimal(figure.group(1).replace(',', '.'))
				.multiply(BigDecimal.valueOf(one.times() * one.unit().nanometres())).setScale(0, RoundingMode.DOWN))
				.filter(nanometres -> nanometres.abs().compareTo(BigDecimal.valueOf(Lengths.LONGEST.nanometres())) <= 0)
				.map(nanometres -> new Length(nanometres.longValueExact()));
	}
}

package padwright.workup.checks.stock;

import java.math.BigDecimal;

import padwright.model.Range;
import padwright.model.stock.Climate;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** A climate is one in which an instrument can live. */
public final class ClimateCheck extends Check<Climate> {

	public ClimateCheck() {
		super(Climate.class);
	}

	private static final Range HUMIDITY = Range.valueOf("0..100");
	private static final Range TEMPERATURE = new Range(BigDecimal.valueOf(-40), BigDecimal.valueOf(60));

	@Override
	protected void check(Climate climate, Findings findings) {
		if (isOutside(TEMPERATURE, climate.getTemperature())) {
			findings.error(IssueCodes.CLIMATE_IMPOSSIBLE,
					Place.of(climate, StockPackage.Literals.CLIMATE__TEMPERATURE),
					Advice.of("climate-impossible.temperature", climate.getTemperature().toPlainString()));
		}
		if (isOutside(HUMIDITY, climate.getHumidity())) {
			findings.error(IssueCodes.CLIMATE_IMPOSSIBLE, Place.of(climate, StockPackage.Literals.CLIMATE__HUMIDITY),
					Advice.of("climate-impossible.humidity", climate.getHumidity().toPlainString()));
		}
	}

	private static boolean isOutside(Range range, BigDecimal number) {
		return number != null && (number.compareTo(range.low()) < 0 || number.compareTo(range.high()) > 0);
	}
}

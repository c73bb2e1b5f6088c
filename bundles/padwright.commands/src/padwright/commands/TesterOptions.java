package padwright.commands;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Supplier;

import padwright.engine.leak.Air;
import padwright.engine.leak.Tester;
import padwright.model.stock.Stock;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Option;

/** The leak tester that a prediction is made for. */
final class TesterOptions {

	private static final BigDecimal USUAL_CELSIUS = BigDecimal.valueOf(20);

	@Option(names = "--pressure", paramLabel = "PA", defaultValue = "1000",
			description = "Pressure of the leak tester in Pa (default ${DEFAULT-VALUE}).")
	private double pascals;

	@Option(names = "--temperature", paramLabel = "C",
			description = "Temperature of the air in °C (default: that of the bench in the stock, else 20).")
	private BigDecimal celsius;

	/** In °C: as it was given, or that of the plan's bench. */
	BigDecimal celsius(ServicePlan plan) {
		return Optional.ofNullable(celsius)
				.or(() -> plan.stock().map(Stock::getClimate).map(climate -> climate.getTemperature()))
				.orElse(USUAL_CELSIUS);
	}

	Tester tester(ServicePlan plan) {
		Air air = option("--temperature " + celsius(plan).toPlainString(),
				() -> Air.at(celsius(plan).doubleValue()));
		return option("--pressure " + pascals, () -> new Tester(pascals, air));
	}

	private static <T> T option(String written, Supplier<T> value) {
		try {
			return value.get();
		} catch (IllegalArgumentException outOfRange) {
			throw new InputException(written + " cannot be used: " + outOfRange.getMessage());
		}
	}
}

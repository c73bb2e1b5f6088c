package padwright.commands;

import java.time.DateTimeException;
import java.time.LocalDate;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day as plans write it. */
final class Day implements ITypeConverter<LocalDate> {

	@Override
	public LocalDate convert(String written) {
		try {
			return LocalDate.parse(written);
		} catch (DateTimeException noDay) {
			throw new TypeConversionException("'" + written + "' is not a day such as 2026-03-02");
		}
	}
}

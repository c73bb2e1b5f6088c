package padwright.commands;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.workup.sound.FitRoom;
import picocli.CommandLine.Option;

/** How a layout may be brought in tune. */
final class FitOptions {

	@Option(names = "--fit", description = "Propose the least changes of holes and open end that bring the scale in tune, as "
			+ "edits of the text. Not for an instrument in service: metal is not taken off.")
	private boolean fit;

	@Option(names = "--move", paramLabel = "MM", defaultValue = "3",
			description = "With --fit: how far holes and open end may be moved (default ${DEFAULT-VALUE}).")
	private BigDecimal move;

	@Option(names = "--widen", paramLabel = "MM", defaultValue = "0.3",
			description = "With --fit: how much the diameter of a hole may grow or shrink (default ${DEFAULT-VALUE}).")
	private BigDecimal widen;

	@Option(names = "--octaves", paramLabel = "N", defaultValue = "2",
			description = "With --fit: octaves whose usual notes count, from the lowest (default ${DEFAULT-VALUE}).")
	private int octaves;

	@Option(names = "--write", paramLabel = "OUT",
			description = "With --fit: write the text with the changes to another file.")
	private Path file;

	/** @throws InputException if options for a fit stand without it */
	boolean isAsked() {
		if (file != null && !fit) {
			throw new InputException("--write writes what --fit proposes; give both");
		}
		return fit;
	}

	Optional<Path> file() {
		return Optional.ofNullable(file);
	}

	/** @throws InputException if there is no room */
	FitRoom room() {
		try {
			return new FitRoom(millimetres(move), millimetres(widen), octaves);
		} catch (IllegalArgumentException | ArithmeticException none) {
			throw new InputException("--move and --widen are millimetres, not below 0 and not both 0; --octaves is 1 or more");
		}
	}

	private static Length millimetres(BigDecimal number) {
		return Length.of(number, LengthUnit.MILLIMETRE);
	}
}

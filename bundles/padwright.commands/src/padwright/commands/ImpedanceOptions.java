package padwright.commands;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Collectors;

import padwright.engine.acoustics.Impedance;
import padwright.engine.acoustics.Instrument;
import padwright.language.files.SafeFile;
import padwright.workup.sound.FingeredTone;
import padwright.workup.sound.SystemSound;
import picocli.CommandLine.Option;

/** What the impedance of a fingering is written with. */
final class ImpedanceOptions {

	private static final int MOST_POINTS = 1_000_000;
	private static final BigDecimal HIGHEST = BigDecimal.valueOf(20_000);
	private static final String HEAD = "hz,re,im\n";

	@Option(names = "--note", paramLabel = "LABEL",
			description = "With --impedance: the fingering, by its label, or its note as in G4 or A#4/lever.")
	private String note;

	@Option(names = "--impedance", paramLabel = "OUT",
			description = "Write the impedance of one fingering as columns hz,re,im: seen from the embouchure hole, or from "
					+ "the upper end where there is none, over the characteristic impedance there.")
	private Path file;

	@Option(names = "--from", paramLabel = "HZ", defaultValue = "100", description = "From (default ${DEFAULT-VALUE}).")
	private BigDecimal from;

	@Option(names = "--to", paramLabel = "HZ", defaultValue = "3000", description = "To (default ${DEFAULT-VALUE}).")
	private BigDecimal to;

	@Option(names = "--step", paramLabel = "HZ", defaultValue = "1", description = "Step (default ${DEFAULT-VALUE}).")
	private BigDecimal step;

	/** @throws InputException if only part of what is needed was given */
	boolean isAsked() {
		if ((note == null) != (file == null)) {
			throw new InputException("--note and --impedance go together: one names the fingering, one the file");
		}
		return file != null;
	}

	/** Writes the table. */
	Path write(SystemSound system) {
		FingeredTone tone = system.tone(note).orElseThrow(() -> new InputException("there is no fingering " + note
				+ "; there are " + system.tones().stream().map(FingeredTone::name).collect(Collectors.joining(", "))));
		try {
			SafeFile.write(file, table(system.instrument().orElseThrow(), tone).getBytes(StandardCharsets.UTF_8));
			return file;
		} catch (IOException failed) {
			throw new InputException(file, "was not written: " + Reasons.of(failed));
		}
	}

	private String table(Instrument instrument, FingeredTone tone) {
		int points = points();
		StringBuilder table = new StringBuilder(HEAD);
		for (int point = 0; point < points; point++) {
			BigDecimal hertz = from.add(step.multiply(BigDecimal.valueOf(point)));
			Impedance impedance = instrument.impedance(tone.note().fingering(), hertz.doubleValue())
					.over(instrument.characteristicImpedance());
			table.append(hertz.toPlainString()).append(',').append(impedance.real()).append(',')
					.append(impedance.imaginary()).append('\n');
		}
		return table.toString();
	}

	private int points() {
		if (from.signum() <= 0 || step.signum() <= 0 || to.compareTo(from) < 0 || to.compareTo(HIGHEST) > 0) {
			throw new InputException("--from, --to and --step are frequencies in Hz, above 0, rising, to "
					+ HIGHEST.toPlainString() + " at most");
		}
		BigDecimal steps = to.subtract(from).divide(step, 0, RoundingMode.FLOOR);
		if (steps.compareTo(BigDecimal.valueOf(MOST_POINTS)) >= 0) {
			throw new InputException("--step " + step.toPlainString() + " makes more than " + MOST_POINTS
					+ " lines; take a wider one");
		}
		return steps.intValueExact() + 1;
	}
}

package padwright.benchmarks.rounds;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import padwright.engine.bench.BenchWork.Told;
import padwright.engine.bench.Instrument;
import padwright.engine.bench.Method;
import padwright.engine.bench.RoundsTable;

/**
 * Plays pads at the simulated bench and prints how many came level after how many rounds, beside a rule of thumb and
 * perfect knowledge: RoundsReport PADS PICTURE.svg. The last line is "rounds-vs-rule-of-thumb: ratio".
 */
public final class RoundsReport {

	private static final int[] HOURS = { 4, 6, 8, 12 };
	private static final int BASE_HOURS = 8;

	private final int pads;
	private final List<Told> told = new ArrayList<>();
	private double rounds;
	private double byThumb;

	private RoundsReport(int pads) {
		this.pads = pads;
	}

	public static void main(String[] arguments) throws IOException {
		RoundsReport report = new RoundsReport(Integer.parseInt(arguments[0]));
		System.out.printf("%d pads each; per cent in which every hour drags after 1, 2, 3 rounds of film, never within"
				+ " eight; of those the share truly level, and level to 0.1 thou more%n", report.pads);
		System.out.printf("%-30s %5s %-6s %-14s %14s %6s %6s %6s %7s %7s %8s %8s%n", "instrument", "hours", "graded",
				"method", "after 1/2/3", "never", "true", "near", "rounds", "pieces", "readings", "bad none");
		for (Instrument instrument : Instrument.values()) {
			report.play(instrument);
		}
		Calibration calibration = Calibration.of(report.told);
		System.out.print(calibration.table());
		Files.writeString(Path.of(arguments[1]), calibration.picture());
		System.out.printf(Locale.ROOT, "rounds-vs-rule-of-thumb: %.2f%n", report.rounds / report.byThumb);
	}

	private void play(Instrument instrument) {
		for (int hours : HOURS) {
			for (boolean graded : new boolean[] { false, true }) {
				RoundsTable answered = print(instrument, hours, graded, Method.ANSWERED);
				told.addAll(answered.told());
				if (hours == BASE_HOURS && !graded) {
					double thumb = print(instrument, hours, graded, Method.RULE_OF_THUMB).meanRounds();
					rounds += answered.meanRounds();
					byThumb += thumb;
					print(instrument, hours, graded, Method.RIM_KNOWN);
					System.out.printf(Locale.ROOT, "%s: %.2f rounds of film for one by the rule of thumb%n", instrument.label(),
							answered.meanRounds() / thumb);
				}
			}
		}
	}

	private RoundsTable print(Instrument instrument, int hours, boolean graded, Method method) {
		RoundsTable table = RoundsTable.play(pads, instrument, hours, graded, method);
		System.out.printf(Locale.ROOT, "%-30s %5d %-6s %-14s %14s %6.1f %6.0f %6.0f %7.2f %7.2f %8.1f %8d%n",
				instrument.label(), hours, graded ? "yes" : "no", method.name().toLowerCase(Locale.ROOT).replace('_', ' '),
				"%.0f / %.0f / %.0f".formatted(100 * table.levelAfter(1), 100 * table.levelAfter(2),
						100 * table.levelAfter(3)),
				100 * table.never(), 100 * table.trulyLevel(), 100 * table.nearlyLevel(), table.meanRounds(),
				table.meanPieces(), table.meanReadings(),
				table.told().stream().filter(Told::noneUnexplained).count());
		return table;
	}
}

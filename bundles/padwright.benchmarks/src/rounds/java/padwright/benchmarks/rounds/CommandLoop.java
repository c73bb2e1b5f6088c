package padwright.benchmarks.rounds;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.LongStream;

import padwright.engine.bench.BenchWork;
import padwright.engine.bench.Instrument;
import padwright.engine.bench.Method;
import padwright.engine.bench.RoundsTable;

/** Plays the same pads by the engine and through the command {@code solve --json}: CommandLoop PADS FOLDER. */
public final class CommandLoop {

	private static final int HOURS = 8;

	private CommandLoop() {
	}

	public static void main(String[] arguments) throws Exception {
		int pads = Integer.parseInt(arguments[0]);
		Path folder = Files.createDirectories(Path.of(arguments[1]));
		for (boolean graded : new boolean[] { false, true }) {
			print("engine", graded, RoundsTable.play(pads, Instrument.SOLDERED_RIGID, HOURS, graded, Method.ANSWERED));
			CommandAdviser command = new CommandAdviser(folder, graded);
			print("solve --json", graded, new RoundsTable(LongStream.rangeClosed(1, pads)
					.mapToObj(pad -> BenchWork.play(pad, Instrument.SOLDERED_RIGID, HOURS, graded, command)).toList()));
		}
	}

	private static void print(String by, boolean graded, RoundsTable table) {
		System.out.printf(Locale.ROOT, "%-12s %-10s after 1/2/3: %.0f / %.0f / %.0f, never %.1f, rounds %.2f%n", by,
				graded ? "graded" : "plain dots", 100 * table.levelAfter(1), 100 * table.levelAfter(2),
				100 * table.levelAfter(3), 100 * table.never(), table.meanRounds());
	}
}

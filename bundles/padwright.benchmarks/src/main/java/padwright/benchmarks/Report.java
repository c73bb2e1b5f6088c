package padwright.benchmarks;

import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;

import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

import padwright.engine.length.Length;
import padwright.engine.levelling.Levelling;
import padwright.engine.levelling.LevellingProblem;

/** Runs everything that is measured and prints it; the last line is for scripts. */
public final class Report {

	private static final int INSTRUMENT = 25;

	private Report() {
	}

	/** @param arguments {@code --quick} for a run of a few minutes */
	public static void main(String[] arguments) throws RunnerException {
		boolean quick = List.of(arguments).contains("--quick");
		System.out.printf("Java %s, %d processors, one thread used%n%n", Runtime.version(),
				Runtime.getRuntime().availableProcessors());
		printPads(quick);
		printInstrument();
		HeightComparison.print(quick ? 50 : 500);
		Growth.print(quick ? 2 : 15);
		System.out.println();
		double ratio = new Comparison(Duration.ofSeconds(quick ? 4 : 60)).run(Pads.USUAL, quick ? 3 : 9);
		System.out.printf("%nlevelling-vs-best-solver: %.0f%n", ratio);
	}

	private static void printPads(boolean quick) throws RunnerException {
		ChainedOptionsBuilder options = new OptionsBuilder().include(LevellingBenchmark.class.getName())
				.verbosity(VerboseMode.SILENT);
		if (quick) {
			options.warmupIterations(2).warmupTime(TimeValue.seconds(2)).measurementIterations(2)
					.measurementTime(TimeValue.seconds(3));
		}
		Collection<RunResult> results = new Runner(options.build()).run();
		System.out.println("ms per pad, seated within 0.5 thou, 8 thicknesses, by the pieces it takes");
		System.out.printf("%-10s%12s%12s%12s%n", "pieces", "median", "99 %", "samples");
		for (RunResult run : results) {
			Result<?> result = run.getPrimaryResult();
			System.out.printf("%-10s%12.3f%12.3f%12d%n", run.getParams().getParam("pieces"),
					result.getStatistics().getPercentile(50), result.getStatistics().getPercentile(99),
					result.getStatistics().getN());
		}
		System.out.println();
	}

	/** From nothing: films and stiffness are new to the process, as they are to a command that solves one plan. */
	private static void printInstrument() {
		Pads pads = new Pads(7);
		List<LevellingProblem> instrument = IntStream.range(0, INSTRUMENT)
				.mapToObj(pad -> pads.next(Pads.USUAL, Length.thou("0.5"), LevellingProblem.MOST_PIECES)).toList();
		for (String state : List.of("cold", "warm")) {
			double levelling = Timing.of(() -> instrument.stream().map(Levelling::solve).toList()).milliseconds();
			double whole = Timing.of(new WholeInstrument(instrument)::run).milliseconds();
			System.out.printf("An instrument of %d pads, %s: levelling %.0f ms; all from readings to forecast %.0f ms%n",
					INSTRUMENT, state, levelling, whole);
		}
		System.out.println();
	}
}

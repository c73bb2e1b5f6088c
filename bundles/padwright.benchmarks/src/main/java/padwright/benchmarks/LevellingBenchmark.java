package padwright.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import padwright.engine.levelling.Levelling;
import padwright.engine.levelling.LevellingProblem;
import padwright.engine.levelling.LevellingSolution;

/** One pad after another of those that take so many pieces: eight thicknesses, seated within half a thou. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 3)
public class LevellingBenchmark {

	private static final int PADS = 24;

	@Param({"1", "2", "3", "4"})
	int pieces;

	private List<LevellingProblem> pads;
	private int next;

	@Setup
	public void choosePads() {
		pads = new Pads(pieces).needing(pieces, Pads.USUAL, PADS);
	}

	@Benchmark
	public LevellingSolution pad() {
		next = (next + 1) % PADS;
		return Levelling.solve(pads.get(next));
	}
}

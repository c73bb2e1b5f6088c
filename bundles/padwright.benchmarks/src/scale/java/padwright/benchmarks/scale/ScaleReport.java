package padwright.benchmarks.scale;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/**
 * Measures checks of generated archives: ScaleReport EXAMPLE SCRATCH PLANS… Each figure is of a process of its own, run
 * with the options of this one: what a check of 1,000 plans has warmed up does not help that of 10,000, and the start of
 * Java counts on both sides of each ratio.
 */
public final class ScaleReport {

	private static final int RUNS = 2;
	private static final long AT_REST_NANOS = 2_500_000_000L;

	private final Path archive;
	private final Path results;
	private final int plans;

	private ScaleReport(Path scratch, int plans) {
		this.archive = scratch.resolve("archive" + plans);
		this.results = scratch.resolve("results" + plans);
		this.plans = plans;
	}

	public static void main(String[] arguments) throws Exception {
		System.out.printf("%d processors, Java %s, options %s; seconds of processor time, least of %d runs%n%n",
				Runtime.getRuntime().availableProcessors(), System.getProperty("java.version"), options(), RUNS);
		System.out.printf("%6s %7s | %7s %7s %7s %6s %7s %5s | %7s %7s %8s %6s | %8s %6s | %7s %8s %6s %5s%n", "plans",
				"lines", "parse s", "check s", "wall s", "ratio", "s/1000", "MiB", "again s", "1 plan", "system s",
				"files", "at hand", "1/part", "serve s", "1 edit", "1/part", "MiB");
		Path scratch = Path.of(arguments[1]).toRealPath();
		for (String plans : Arrays.copyOfRange(arguments, 2, arguments.length)) {
			new ScaleReport(scratch, Integer.parseInt(plans)).measure(Path.of(arguments[0]));
		}
		System.out.printf("%nagain, 1 plan, system: the command with its index, when nothing, one plan or one system has"
				+ " changed; it looks at the times of all files.%nat hand: ms for one plan changed in a process that has"
				+ " the results at hand, but looks at all times, too.%n1 edit: ms for one edit in the language server,"
				+ " whose start, with a check of all, is serve.%n");
	}

	private void measure(Path example) throws Exception {
		long lines = new ArchiveGenerator(example, archive).write(plans);
		rest();
		Cost parse = run("parse");
		Cost check = fullCheck();
		Cost again = run("check");
		Cost onePlan = afterEdit(archive.resolve(ArchiveGenerator.name(plans / 2)), "7.5 7.5", "7.5 7");
		Cost system = afterEdit(archive.resolve("systems/base0.keys"), "rim 0.9", "rim 0.8");
		Cost atHand = run("edits");
		Cost server = run("server");
		System.out.printf("%6d %7d | %7.2f %7.2f %7.2f %6.2f %7.2f %5d | %7.2f %7.2f %8.2f %6.0f | %8.1f %6.0f"
				+ " | %7.2f %8.1f %6.0f %5d%n", plans, lines, parse.cpu(), check.cpu(), check.wall(),
				parse.cpu() / check.cpu(), 1000 * check.cpu() / plans, check.peak(), again.cpu(), onePlan.cpu(),
				system.cpu(), system.detail(), 1000 * atHand.detail(), check.cpu() / atHand.detail(), server.cpu(),
				1000 * server.detail(), check.cpu() / server.detail(), server.peak());
		delete(archive);
	}

	/** A file changed in the last two seconds is read again whatever the index says; an archive at rest is measured. */
	private static void rest() {
		LockSupport.parkNanos(AT_REST_NANOS);
	}

	private Cost fullCheck() throws IOException, InterruptedException {
		List<Cost> runs = new ArrayList<>();
		for (int number = 0; number < RUNS; number++) {
			Files.deleteIfExists(results);
			runs.add(once("check"));
		}
		return Cost.least(runs);
	}

	private Cost afterEdit(Path file, String from, String to) throws IOException, InterruptedException {
		Files.writeString(file, Files.readString(file).replace(from, to));
		rest();
		return once("check");
	}

	private Cost run(String what) throws IOException, InterruptedException {
		List<Cost> runs = new ArrayList<>();
		for (int number = 0; number < RUNS; number++) {
			runs.add(once(what));
		}
		return Cost.least(runs);
	}

	private Cost once(String what) throws IOException, InterruptedException {
		List<String> command = new ArrayList<>();
		command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
		command.addAll(options());
		command.addAll(List.of("-cp", System.getProperty("java.class.path"), ScaleRun.class.getName(), what,
				archive.toString(), results.toString()));
		Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
		List<String> printed = process.inputReader().lines().toList();
		process.waitFor();
		return Cost.parse(printed);
	}

	private static List<String> options() {
		return ManagementFactory.getRuntimeMXBean().getInputArguments();
	}

	private static void delete(Path folder) throws IOException {
		try (Stream<Path> below = Files.walk(folder)) {
			for (Path path : below.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(path);
			}
		}
	}
}

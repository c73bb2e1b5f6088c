package padwright.benchmarks.scale;

import java.io.IOException;
import java.io.StringReader;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;
import java.util.stream.Stream;

import com.google.inject.Injector;
import com.sun.management.OperatingSystemMXBean;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.archive.ResultStore;
import padwright.language.archive.ShopCheck;
import padwright.language.parser.antlr.PadwrightParser;
import padwright.language.shop.ShopFinding;
import padwright.language.shop.ShopFolder;

/** Measures checks of generated archives: ScaleReport EXAMPLE SCRATCH PLANS… */
public final class ScaleReport {

	private static final long AT_REST_NANOS = 2_500_000_000L;
	private static final int THREADS = Runtime.getRuntime().availableProcessors();
	private static final OperatingSystemMXBean PROCESS =
			(OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
	private static final String VERSION = "measured";

	private final Path archive;
	private final Path results;
	private final List<Path> files;
	private final int plans;

	private ScaleReport(Path archive, Path results, int plans) throws Exception {
		this.archive = archive;
		this.results = results;
		this.plans = plans;
		this.files = ShopFolder.documents(archive);
	}

	public static void main(String[] arguments) throws Exception {
		PadwrightStandaloneSetup.doSetup();
		System.out.printf("%d processors, Java %s, heap at most %d MiB; seconds of processor time%n%n", THREADS,
				System.getProperty("java.version"), Runtime.getRuntime().maxMemory() >> 20);
		System.out.printf("%6s %8s %9s %9s %6s %9s %9s %9s %9s %9s %9s%n", "plans", "lines", "parse s", "check s",
				"ratio", "wall s", "again s", "plan ms", "1/part", "system s", "rechecked");
		Path scratch = Path.of(arguments[1]).toRealPath();
		for (String plans : Arrays.copyOfRange(arguments, 2, arguments.length)) {
			Path archive = scratch.resolve("archive" + plans);
			long lines = new ArchiveGenerator(Path.of(arguments[0]), archive).write(Integer.parseInt(plans));
			new ScaleReport(archive, scratch.resolve("results" + plans), Integer.parseInt(plans)).measure(lines);
			delete(archive);
		}
		System.out.printf("%npeak memory of the process: %s%n", peak());
	}

	private void measure(long lines) throws Exception {
		// A file changed in the last two seconds is read again whatever the index says; an archive at rest is measured.
		LockSupport.parkNanos(AT_REST_NANOS);
		double parse = seconds(this::parseAll);
		long start = System.nanoTime();
		double check = seconds(() -> check(file -> { }).size());
		double wall = (System.nanoTime() - start) / 1e9;
		double again = seconds(() -> check(file -> { }).size());
		double plan = plansEdited();
		List<Path> rechecked = new ArrayList<>();
		Path base = archive.resolve("systems/base0.keys");
		Files.writeString(base, Files.readString(base).replace("rim 0.9", "rim 0.8"));
		double system = seconds(() -> check(file -> {
			synchronized (rechecked) {
				rechecked.add(file);
			}
		}).size());
		System.out.printf("%6d %8d %9.2f %9.2f %6.2f %9.2f %9.2f %9.1f %9.0f %9.2f %9d%n", plans, lines, parse, check,
				parse / check, wall, again, plan * 1000, check / plan, system, rechecked.size());
	}

	/** A plan at a time is edited and the archive checked again by a process that has its results at hand. */
	private double plansEdited() throws Exception {
		ResultStore store = ResultStore.open(results, VERSION);
		ShopCheck check = shopCheck();
		double[] all = new double[9];
		for (int edit = 0; edit < all.length; edit++) {
			Path file = archive.resolve(ArchiveGenerator.name(edit * plans / all.length));
			Files.writeString(file, Files.readString(file).replace("7.5 7.5", "7.5 7"));
			all[edit] = seconds(() -> check.run(files, store, changed -> { }, () -> false).size());
		}
		store.save();
		Arrays.sort(all);
		return all[all.length / 2];
	}

	private List<ShopFinding> check(Consumer<Path> progress) throws IOException {
		ResultStore store = ResultStore.open(results, VERSION);
		List<ShopFinding> findings = shopCheck().run(files, store, progress, () -> false);
		store.save();
		return findings;
	}

	private ShopCheck shopCheck() {
		return new ShopCheck(archive, files, Map.of(), () -> new PadwrightStandaloneSetup().createInjector(), THREADS);
	}

	/** The generated parser alone, as many at once. */
	private Integer parseAll() throws Exception {
		List<Thread> threads = new ArrayList<>();
		for (int number = 0; number < THREADS; number++) {
			int first = number;
			Injector language = new PadwrightStandaloneSetup().createInjector();
			threads.add(new Thread(() -> parse(language.getInstance(PadwrightParser.class), first)));
		}
		threads.forEach(Thread::start);
		for (Thread thread : threads) {
			thread.join();
		}
		return files.size();
	}

	private void parse(PadwrightParser parser, int first) {
		try {
			for (int file = first; file < files.size(); file += THREADS) {
				parser.parse(new StringReader(Files.readString(files.get(file))));
			}
		} catch (IOException gone) {
			throw new IllegalStateException(gone);
		}
	}

	/** Of all processors together, so that what else runs on the machine does not count. */
	private static double seconds(Callable<Integer> work) throws Exception {
		long start = PROCESS.getProcessCpuTime();
		work.call();
		return (PROCESS.getProcessCpuTime() - start) / 1e9;
	}

	private static String peak() throws IOException {
		Path status = Path.of("/proc/self/status");
		return Files.exists(status) ? Files.readAllLines(status).stream().filter(line -> line.startsWith("VmHWM"))
				.findFirst().orElse("?").replaceAll("\\s+", " ") : "unknown here";
	}

	private static void delete(Path folder) throws IOException {
		try (Stream<Path> below = Files.walk(folder)) {
			for (Path path : below.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(path);
			}
		}
	}
}

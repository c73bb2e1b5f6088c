package padwright.benchmarks.scale;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

import com.google.inject.Injector;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.archive.ResultStore;
import padwright.language.archive.ShopCheck;
import padwright.language.parser.antlr.PadwrightParser;
import padwright.language.shop.ShopFolder;

/** One measured process: ScaleRun parse|check|edits|server ARCHIVE RESULTS; prints its {@link Cost}. */
final class ScaleRun {

	private static final int THREADS = Runtime.getRuntime().availableProcessors();
	private static final int EDITS = 40;
	private static final String VERSION = "measured";

	private final Path archive;
	private final Path results;
	private final List<Path> files;

	private ScaleRun(Path archive, Path results) throws Exception {
		this.archive = archive;
		this.results = results;
		this.files = ShopFolder.documents(archive);
	}

	public static void main(String[] arguments) throws Exception {
		PadwrightStandaloneSetup.doSetup();
		ScaleRun run = new ScaleRun(Path.of(arguments[1]), Path.of(arguments[2]));
		double detail = switch (arguments[0]) {
		case "parse" -> run.parse();
		case "check" -> run.check();
		case "edits" -> run.edits();
		case "server" -> ServerEdits.measure(run.archive, run.files);
		default -> throw new IllegalArgumentException(arguments[0]);
		};
		Cost.now(detail).print();
		System.exit(0);
	}

	/** The generated parser alone, as many at once as a check has. */
	private int parse() throws InterruptedException {
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

	/** As the command does it, with the results of former checks, and keeps its own; gives how many files it judged. */
	private int check() throws IOException {
		ResultStore store = ResultStore.open(results, VERSION);
		AtomicInteger judged = new AtomicInteger();
		shopCheck().run(files, store, file -> judged.incrementAndGet(), () -> false);
		store.save();
		return judged.get();
	}

	/** Seconds of processor time for one plan edited, by a process that has the results of the others at hand. */
	private double edits() throws IOException {
		ResultStore store = ResultStore.open(results, VERSION);
		ShopCheck check = shopCheck();
		double start = 0;
		for (int edit = 0; edit < 2 * EDITS; edit++) {
			// The first half warms up.
			start = edit == EDITS ? Cost.cpuSeconds() : start;
			edit(files.get(files.size() / 4 + edit), edit);
			check.run(files, store, changed -> { }, () -> false);
		}
		return (Cost.cpuSeconds() - start) / EDITS;
	}

	private static void edit(Path plan, int number) throws IOException {
		Files.writeString(plan, Files.readString(plan) + "// Looked at " + number + "\n");
	}

	private ShopCheck shopCheck() {
		return new ShopCheck(archive, files, Map.of(), () -> new PadwrightStandaloneSetup().createInjector(), THREADS);
	}
}

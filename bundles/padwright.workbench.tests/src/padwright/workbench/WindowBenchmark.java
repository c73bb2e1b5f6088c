package padwright.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;

import org.eclipse.core.resources.IResource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.editor.PlanEditor;
import padwright.workbench.session.Finding;

/** Measures how fast the window answers; not a test, and only run when named. */
class WindowBenchmark {

	private static final int KEYSTROKES = 200;
	private static final int WARM_UP = 40;
	private static final double NANOS_PER_MILLISECOND = 1e6;

	@TempDir
	private Path folder;

	/** From a keystroke to the markers it brings, in a folder of 80 plans of 25 keys each: 2,000 lines. */
	@Test
	void fromKeystrokeToMarkers() throws Exception {
		Driver.copyExampleShop(folder);
		copies(folder.resolve("shop"), 80);
		try (Driver driver = Driver.over(folder)) {
			String plan = "plans/many/copy-0.plan";
			PlanEditor editor = driver.open(plan);
			Driver.waitFor("the plan read", () -> driver.findings(plan).isEmpty());
			List<Long> times = new ArrayList<>();
			for (int stroke = 0; stroke < KEYSTROKES + WARM_UP; stroke++) {
				boolean breaking = stroke % 2 == 0;
				long start = System.nanoTime();
				Driver.replace(editor, breaking ? "with Bench" : "with Benc", breaking ? "with Benc" : "with Bench");
				while (driver.file(plan).findMarkers(Finding.MARKER, true, IResource.DEPTH_ZERO).length == 0 == breaking) {
					LockSupport.parkNanos(200_000);
				}
				if (stroke >= WARM_UP) {
					times.add(System.nanoTime() - start);
				}
			}
			print("keystroke to markers", times);
		}
	}

	/** How long the window's thread does not answer while 500 plans are read and checked. */
	@Test
	void stallsWhileAFolderIsAnalysed() throws Exception {
		AtomicBoolean done = new AtomicBoolean();
		List<Long> waits = Collections.synchronizedList(new ArrayList<>());
		Thread pulse = new Thread(() -> {
			while (!done.get()) {
				long start = System.nanoTime();
				Driver.display().syncExec(() -> waits.add(System.nanoTime() - start));
				LockSupport.parkNanos(1_000_000);
			}
		}, "pulse");
		Driver.copyExampleShop(folder);
		copies(folder.resolve("shop"), 500);
		long start = System.nanoTime();
		try (Driver driver = Driver.over(folder)) {
			driver.open("plans/first.plan");
			// The first editor has just been opened; from here on only the analysis can be in the way.
			pulse.start();
			Driver.waitFor("the last plan read", () -> !driver.findings("plans/student-flute.plan").isEmpty());
			done.set(true);
			pulse.join();
			System.out.println(String.format(Locale.ROOT, "analysis of 500 plans: %.0f ms",
					(System.nanoTime() - start) / NANOS_PER_MILLISECOND));
			print("wait for the window's thread", waits);
			System.out.println("waits above 100 ms: " + waits.stream().filter(wait -> wait > 100_000_000).count());
		}
	}

	private static void copies(Path shop, int count) throws IOException {
		String quarterTone = Files.readString(shop.resolve("plans/quarter-tone.plan"));
		Path many = Files.createDirectories(shop.resolve("plans/many"));
		for (int copy = 0; copy < count; copy++) {
			Files.writeString(many.resolve("copy-" + copy + ".plan"),
					quarterTone.replaceFirst("plan \\w+", "plan Copy" + copy));
		}
	}

	private static void print(String what, List<Long> nanos) {
		List<Long> sorted = nanos.stream().sorted().toList();
		System.out.println(String.format(Locale.ROOT, "%s: median %.1f ms, 95 %% %.1f ms, most %.1f ms, %d samples", what,
				at(sorted, 0.5), at(sorted, 0.95), at(sorted, 1), sorted.size()));
	}

	private static double at(List<Long> sorted, double share) {
		return sorted.get((int) Math.min(sorted.size() - 1.0, share * sorted.size())) / NANOS_PER_MILLISECOND;
	}
}

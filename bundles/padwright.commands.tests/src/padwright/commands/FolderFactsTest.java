package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.archive.FactStore;
import padwright.workup.learn.PlanFacts;
import padwright.workup.learn.ShopLearning;

/** What plans teach is the same whether it was kept or is taken anew, whatever became of the file that keeps it. */
class FolderFactsTest {

	private static final Path YEAR = Path.of("..", "..", "examples", "year");

	@TempDir
	private Path folder;
	private Path shop;
	private Path kept;

	@BeforeEach
	void copyAQuarter() throws IOException {
		kept = folder.resolve("cache").resolve("kept");
		shop = Files.createDirectory(folder.resolve("shop"));
		for (String file : List.of("padwright.shop", "stock/bench.stock", "systems/flutes.keys", "plans/01-january.plan",
				"plans/02-february.plan", "plans/03-march.plan")) {
			Files.copy(YEAR.resolve(file), shop.resolve(Path.of(file).getFileName()));
		}
	}

	private List<PlanFacts> facts(FactStore<PlanFacts> store) {
		return FolderFacts.in(shop, top -> store, new PrintWriter(new StringWriter())).facts();
	}

	private FactStore<PlanFacts> open() {
		return FolderFacts.open(kept, "1");
	}

	private List<PlanFacts> anew() {
		return facts(FactStore.none());
	}

	@Test
	void whatIsKeptIsWhatWouldBeTakenAnew() {
		List<PlanFacts> anew = anew();
		assertEquals(anew, facts(open()));
		assertEquals(anew, facts(open()));
		assertEquals(ShopLearning.ofFacts(anew), ShopLearning.ofFacts(facts(open())));
		assertTrue(anew.stream().anyMatch(plan -> plan.visit().isPresent() && !plan.gaps().isEmpty())
				&& anew.stream().anyMatch(plan -> !plan.rounds().isEmpty()), "nothing to keep");
	}

	@Test
	void aSpoiltFileIsPassedOverAndWrittenAnew() throws IOException {
		List<PlanFacts> anew = facts(open());
		byte[] whole = Files.readAllBytes(kept);
		for (int cut = 0; cut < whole.length; cut += Math.max(1, whole.length / 20)) {
			Files.write(kept, Arrays.copyOf(whole, cut));
			assertEquals(anew, facts(open()), "cut at " + cut);
			byte[] bent = whole.clone();
			bent[cut] ^= 0x55;
			Files.write(kept, bent);
			assertEquals(anew, facts(open()), "bent at " + cut);
			assertEquals(whole.length, Files.size(kept));
		}
		Files.writeString(kept, "no cache of ours");
		assertEquals(anew, facts(FolderFacts.open(kept, "2")));
	}

	@Test
	void afterAChangeOfAPlanOrTheStockAllIsAsTakenAnew() throws IOException {
		List<PlanFacts> before = facts(open());
		change("02-february.plan", "found worn", "found torn");
		List<PlanFacts> torn = facts(open());
		assertEquals(anew(), torn);
		assertNotEquals(before, torn);
		change("bench.stock", "\"woven felt pad\"", "\"another felt pad\"");
		List<PlanFacts> renamed = facts(open());
		assertEquals(anew(), renamed);
		assertNotEquals(torn, renamed);
		Files.delete(shop.resolve("03-march.plan"));
		assertEquals(anew(), facts(open()));
		Files.writeString(shop.resolve("more.plan"), "plan More for Flute serial \"Y-900\" with YearBench {\n\tdate 2026-04-01\n"
				+ "\tplayer \"P\" { }\n\tkey A found torn\n}\n");
		assertEquals(anew(), facts(open()));
	}

	private void change(String file, String was, String is) throws IOException {
		String text = Files.readString(shop.resolve(file));
		assertTrue(text.contains(was), was);
		Files.writeString(shop.resolve(file), text.replace(was, is));
	}

	/** As two commands at once would. */
	@Test
	void twoAtOnceLeaveAFileThatHolds() throws InterruptedException {
		List<PlanFacts> anew = anew();
		List<Thread> both = Stream.of(1, 2).map(each -> new Thread(() -> facts(open()))).toList();
		both.forEach(Thread::start);
		for (Thread one : both) {
			one.join();
		}
		assertEquals(anew, facts(open()));
		assertTrue(Files.exists(kept));
	}
}

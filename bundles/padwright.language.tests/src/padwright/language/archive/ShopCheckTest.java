package padwright.language.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.Examples;
import padwright.language.PadwrightStandaloneSetup;
import padwright.language.TestShop;
import padwright.language.files.UnreadableException;
import padwright.language.shop.Shop;
import padwright.language.shop.ShopFinding;
import padwright.language.shop.ShopFolder;

/** A check file by file, with former results, finds what a look at the whole shop finds. */
class ShopCheckTest {

	private static final int EDITS = 25;
	private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

	@TempDir
	private Path scratch;
	private Path shop;
	private Path results;
	private final Collection<Path> judged = Collections.synchronizedCollection(new TreeSet<>());

	@BeforeEach
	void copyTheExamples() throws IOException {
		shop = Files.createDirectory(scratch.resolve("shop"));
		results = scratch.resolve("results");
		for (Path file : Examples.documents(Examples.TEMPLATES)) {
			write(file.getFileName().toString(), Examples.text(file));
		}
	}

	private Path write(String name, String text) throws IOException {
		Path file = Files.writeString(shop.resolve(name), text);
		return Files.setLastModifiedTime(file, LONG_AGO);
	}

	private List<ShopFinding> check(ResultStore store) throws UnreadableException {
		judged.clear();
		List<Path> files = ShopFolder.documents(shop);
		return check(Map.of()).run(files, store, judged::add, () -> false);
	}

	private ShopCheck check(Map<Path, String> otherTexts) throws UnreadableException {
		return new ShopCheck(shop, ShopFolder.documents(shop), otherTexts, () -> TestShop.LANGUAGE, 1);
	}

	private List<ShopFinding> fresh() throws UnreadableException {
		List<Path> files = ShopFolder.documents(shop);
		Shop whole = Shop.open(TestShop.LANGUAGE, files);
		return files.stream().flatMap(file -> whole.findings(file).stream()).toList();
	}

	private ResultStore open() {
		return ResultStore.open(results, "1");
	}

	@Test
	void theFindingsAreThoseOfTheWholeShop() throws UnreadableException {
		assertEquals(fresh(), check(ResultStore.none()));
	}

	@Test
	void severalThreadsFindTheSame() throws IOException, UnreadableException {
		for (int copy = 0; copy < 100; copy++) {
			write("copy" + copy + ".plan", Files.readString(shop.resolve("student-flute.plan")));
		}
		List<Path> files = ShopFolder.documents(shop);
		assertEquals(fresh(), new ShopCheck(shop, files, Map.of(),
				() -> new PadwrightStandaloneSetup().createInjector(), 3).run(files, open(), judged::add, () -> false));
		assertEquals(files, List.copyOf(judged));
	}

	@Test
	void afterEveryEditTheFindingsAreThoseOfAFreshLook() throws IOException, UnreadableException {
		Random random = new Random(1);
		ResultStore store = open();
		for (int edit = 0; edit < EDITS; edit++) {
			edit(random, edit);
			assertEquals(fresh(), check(store), "edit " + edit);
			store.save();
			store = random.nextBoolean() ? open() : store;
		}
	}

	/** Spoils a file, names a system or stock anew, takes a file away, copies it, or puts the example back. */
	private void edit(Random random, int edit) throws IOException {
		List<Path> examples = Examples.documents(Examples.TEMPLATES);
		Path example = examples.get(random.nextInt(examples.size()));
		String name = example.getFileName().toString();
		String text = Examples.text(example);
		switch (random.nextInt(7)) {
		case 0 -> write(name, text.replaceFirst("15\\b", String.valueOf(random.nextInt(30))));
		case 1 -> write(name, text.replaceFirst("(?m)^(system|stock|plan) \\w+", "$1 Other" + random.nextInt(2)));
		case 2 -> Files.deleteIfExists(shop.resolve(name));
		case 3 -> write("copy" + edit + name, text);
		case 4 -> write(name, text.substring(0, random.nextInt(text.length())));
		case 5 -> write("bench.stock", Files.readString(shop.resolve("boehm.keys")).replaceFirst("2\\.95", "2.9" + edit % 9)
				+ Examples.text(examples.stream().filter(file -> file.endsWith("bench.stock")).findFirst().orElseThrow()));
		default -> write(name, text);
		}
	}

	@Test
	void nothingIsJudgedTwice() throws IOException, UnreadableException {
		ResultStore store = open();
		check(store);
		assertEquals(ShopFolder.documents(shop), List.copyOf(judged));
		store.save();
		assertEquals(fresh(), check(open()));
		assertEquals(List.of(), List.copyOf(judged));
	}

	@Test
	void anEditedPlanAloneIsJudgedAgain() throws IOException, UnreadableException {
		ResultStore store = open();
		check(store);
		Path plan = write("first.plan", Files.readString(shop.resolve("first.plan")).replace("14.5", "15.5"));
		check(store);
		assertEquals(List.of(plan), List.copyOf(judged));
	}

	@Test
	void anEditedSystemIsJudgedAgainWithWhatUsesIt() throws IOException, UnreadableException {
		Path own = write("own.keys", "system Own {\n\tkey A\n}\n");
		Path ownPlan = write("own.plan", "plan OfOwn for Own {\n\tkey A\n}\n");
		ResultStore store = open();
		check(store);
		Path system = write("boehm.keys", Files.readString(shop.resolve("boehm.keys")).replace("2.95", "2.94"));
		check(store);
		assertTrue(judged.containsAll(List.of(system, shop.resolve("first.plan"), shop.resolve("b-foot.plan"),
				shop.resolve("boehm-b-foot.keys"))), judged.toString());
		List.of(own, ownPlan, shop.resolve("bench.stock"))
				.forEach(other -> assertFalse(judged.contains(other), other.toString()));
	}

	@Test
	void aSpoiltForeignOrOtherStoreIsPassedOver() throws IOException, UnreadableException {
		ResultStore store = open();
		check(store);
		store.save();
		byte[] good = Files.readAllBytes(results);
		assertEquals(ShopFolder.documents(shop).size(), open().size());
		assertEquals(0, ResultStore.open(results, "2").size());
		Random random = new Random(1);
		for (int round = 0; round < 200; round++) {
			byte[] spoilt = good.clone();
			spoilt[random.nextInt(spoilt.length)] ^= (byte) (1 + random.nextInt(255));
			Files.write(results, round % 2 == 0 ? spoilt : Arrays.copyOf(good, random.nextInt(good.length)));
			assertEquals(0, open().size(), "round " + round);
		}
		assertEquals(fresh(), check(open()));
	}

	@Test
	void aCancelledCheckKeepsWhatItHas() throws UnreadableException {
		ResultStore store = open();
		AtomicInteger asked = new AtomicInteger();
		List<Path> files = ShopFolder.documents(shop);
		check(Map.of()).run(files, store, judged::add, () -> judged.size() > 3 && asked.incrementAndGet() > 1);
		assertTrue(store.size() > 0 && store.size() < files.size(), "judged " + store.size());
		assertEquals(fresh(), check(store));
	}

	@Test
	void oneFileIsJudgedAmongAll() throws IOException, UnreadableException {
		Path copy = write("copy.plan", Files.readString(shop.resolve("first.plan")));
		List<ShopFinding> expected = fresh().stream().filter(finding -> finding.file().equals(copy)).toList();
		assertTrue(expected.stream().anyMatch(finding -> finding.code().equals("duplicate-name")));
		assertEquals(expected,
				check(Map.of()).run(List.of(copy), ResultStore.none(), judged::add, () -> false));
	}

	@Test
	void otherTextsCountAndAreNotKept() throws UnreadableException {
		Path plan = shop.resolve("first.plan");
		ResultStore store = open();
		List<ShopFinding> findings =
				check(Map.of(plan, "plan P {")).run(List.of(plan), store, judged::add, () -> false);
		assertTrue(findings.stream().anyMatch(finding -> finding.code().equals("syntax")), findings.toString());
		assertEquals(0, store.size());
	}
}

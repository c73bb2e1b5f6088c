package padwright.language.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.language.Examples;
import padwright.language.TestShop;
import padwright.language.formatting2.DocumentFormatter;
import padwright.model.plan.Document;
import padwright.model.plan.Plan;
import padwright.workup.cautions.Cautions;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.ModelChecks;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** Spoilt copies of every example are read, judged, laid out and solved without failing; over 200 in all. */
class MutilatedFilesTest {

	private static final Set<Mutilation> UNREADABLE = Set.of(Mutilation.LATIN_1, Mutilation.UTF_16);

	@TempDir
	private Path folder;

	@ParameterizedTest
	@EnumSource
	void nothingFails(Mutilation mutilation) throws IOException {
		List<Path> copies = copy(Examples.TEMPLATES);
		for (int victim = 0; victim < copies.size(); victim++) {
			String whole = Files.readString(copies.get(victim));
			for (int copy = 0; copy < mutilation.copies(); copy++) {
				Random random = new Random(31L * victim + copy);
				Files.write(copies.get(victim), mutilation.of(whole, random));
				use(mutilation, copies, copies.get(victim));
			}
			Files.writeString(copies.get(victim), whole);
		}
	}

	@Test
	void aByteOrderMarkIsNoMistake() throws IOException {
		Path file = Files.writeString(folder.resolve("flute.keys"), "\uFEFFsystem Flute {\n}\n");
		assertEquals(List.of(), Shop.open(TestShop.LANGUAGE, List.of(file)).findings(file));
	}

	private List<Path> copy(Path shop) throws IOException {
		List<Path> copies = new ArrayList<>();
		for (Path file : Examples.documents(shop)) {
			copies.add(Files.copy(file, folder.resolve(file.getFileName())));
		}
		return copies;
	}

	/** Opens a spoilt file among the systems and stock that it names, and with a plan that may name it. */
	private static void use(Mutilation mutilation, List<Path> files, Path spoilt) {
		Path plan = files.stream().filter(MutilatedFilesTest::isPlan).findFirst().orElseThrow();
		List<Path> opened = files.stream().filter(file -> !isPlan(file) || file.equals(spoilt) || file.equals(plan))
				.toList();
		Shop shop = Shop.open(TestShop.LANGUAGE, opened);
		List.of(spoilt, plan).forEach(file -> shop.findings(file).forEach(MutilatedFilesTest::assertComplete));
		if (UNREADABLE.contains(mutilation)) {
			assertEquals(List.of(IssueCodes.UNREADABLE),
					shop.findings(spoilt).stream().map(ShopFinding::code).toList());
		}
		if (shop.whyUnreadable(spoilt).isEmpty()) {
			String laidOut = TestShop.LANGUAGE.getInstance(DocumentFormatter.class).format(shop.resource(spoilt));
			assertEquals(letters(shop.text(spoilt)), letters(laidOut));
			shop.document(spoilt).ifPresent(MutilatedFilesTest::work);
		}
	}

	private static boolean isPlan(Path file) {
		return file.toString().endsWith(".plan");
	}

	private static String letters(String text) {
		return text.replaceAll("[\\s\\u00A0\\uFEFF]+", "");
	}

	private static void assertComplete(ShopFinding finding) {
		assertTrue(finding.line() >= 1 && finding.column() >= 1 && !finding.message().isBlank(), finding.toString());
		assertFalse(finding.message().contains("Exception"), finding.toString());
	}

	private static void work(Document document) {
		ModelChecks.check(document);
		for (Plan plan : document.getPlans()) {
			ServicePlan service = new ServicePlan(plan);
			PlanSolver.solve(service, WrittenAnswers.REPLACE, job -> {
			});
			Cautions.of(service);
		}
	}
}

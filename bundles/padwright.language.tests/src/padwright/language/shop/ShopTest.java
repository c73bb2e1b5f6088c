package padwright.language.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.TestShop;
import padwright.language.files.UnreadableException;
import padwright.model.plan.Plan;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Severity;

class ShopTest {

	private static final String SYSTEM = "system Flute {\n\tkey A\n}\n";
	private static final String PLAN = "plan Spring for Flute {\n\tkey A\n\tkey B\n\tkey A\n}\n";

	@TempDir
	private Path folder;

	private Path file(String name, String text) throws IOException {
		Files.createDirectories(folder.resolve(name).getParent());
		return Files.writeString(folder.resolve(name), text);
	}

	private Shop open() throws UnreadableException {
		return Shop.open(TestShop.LANGUAGE, ShopFolder.documents(folder));
	}

	@Test
	void filesNameEachOtherInAnyOrderAcrossFolders() throws IOException, UnreadableException {
		Path plan = file("a/spring.plan", PLAN);
		Path system = file("z/flute.keys", SYSTEM);
		Shop shop = open();
		Plan spring = shop.document(plan).orElseThrow().getPlans().get(0);
		assertEquals(shop.document(system).orElseThrow().getSystems().get(0), spring.getSystem());
		assertEquals(List.of(), shop.findings(system));
	}

	@Test
	void findingsComeInTheOrderOfTheLines() throws IOException, UnreadableException {
		Path plan = file("spring.plan", PLAN);
		file("flute.keys", SYSTEM);
		List<ShopFinding> findings = open().findings(plan);
		assertEquals(List.of(IssueCodes.LINK, IssueCodes.DUPLICATE_SERVICE),
				findings.stream().map(ShopFinding::code).toList());
		assertEquals(List.of(3, 4), findings.stream().map(ShopFinding::line).toList());
		assertEquals(List.of(6, 6), findings.stream().map(ShopFinding::column).toList());
	}

	@Test
	void aFileThatIsNoTextIsOneFindingAndLeavesTheOthersAlone() throws IOException, UnreadableException {
		Path plan = file("spring.plan", PLAN.replace("\tkey B\n\tkey A\n", ""));
		file("flute.keys", SYSTEM);
		Path broken = Files.write(folder.resolve("broken.keys"), new byte[] { 's', 0, 'y' });
		Shop shop = open();
		assertEquals(List.of(), shop.findings(plan));
		assertTrue(shop.whyUnreadable(broken).isPresent());
		ShopFinding finding = shop.findings(broken).get(0);
		assertEquals(IssueCodes.UNREADABLE, finding.code());
		assertEquals(Severity.ERROR, finding.severity());
		assertEquals(1, finding.line());
	}

	@Test
	void aMistakeInOneFileIsNoMistakeInAnother() throws IOException, UnreadableException {
		Path plan = file("spring.plan", "plan Spring for Flute {\n\tkey A\n}\n");
		file("flute.keys", "system Flute {\n\tkey A quickly\n}\n");
		assertEquals(List.of(), open().findings(plan));
	}

	@Test
	void anEmptyFileIsADocumentWithoutContent() throws IOException, UnreadableException {
		Path empty = file("empty.plan", "");
		Shop shop = open();
		assertEquals(List.of(), shop.findings(empty));
		assertEquals(Optional.empty(), shop.whyUnreadable(empty));
		assertTrue(shop.document(empty).map(document -> document.eContents().isEmpty()).orElse(true));
	}

	@Test
	void theTextIsKeptAsItWas() throws IOException, UnreadableException {
		String text = "\uFEFF// für\r\nsystem A {\r\n}";
		assertEquals(text, Files.readString(file("a.keys", text)));
		assertEquals(text, open().text(folder.resolve("a.keys")));
	}
}

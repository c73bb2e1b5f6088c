package padwright.language.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.files.UnreadableException;

class ShopFolderTest {

	@TempDir
	private Path folder;

	private Path file(String name) throws IOException {
		Path file = folder.resolve(name);
		Files.createDirectories(file.getParent());
		return Files.writeString(file, "");
	}

	@Test
	void theNearestMarkedFolderIsTheTop() throws IOException {
		Path plan = file("shop/plans/2026/spring.plan");
		file(ShopFolder.MARKER);
		assertEquals(folder, ShopFolder.around(plan));
		file("shop/" + ShopFolder.MARKER);
		assertEquals(folder.resolve("shop"), ShopFolder.around(plan));
		assertEquals(folder.resolve("shop"), ShopFolder.around(plan.getParent()));
		assertEquals(folder.resolve("shop"), ShopFolder.around(plan.getParent().resolve("../2026/spring.plan")));
	}

	@Test
	void withoutAMarkTheFolderItselfIsTheTop() throws IOException {
		Path plan = file("plans/spring.plan");
		assertEquals(plan.getParent(), ShopFolder.around(plan));
		assertEquals(plan.getParent(), ShopFolder.around(plan.getParent()));
		assertEquals(plan.getParent(), ShopFolder.around(plan.resolveSibling("missing.plan")));
	}

	@Test
	void aFolderDoesNotMark() throws IOException {
		Path plan = file("shop/plans/spring.plan");
		Files.createDirectory(folder.resolve(ShopFolder.MARKER));
		assertEquals(plan.getParent(), ShopFolder.around(plan));
	}

	@Test
	void documentsBelowAreFoundInOrder() throws IOException, UnreadableException {
		List<Path> documents = List.of(file("a.keys"), file("b/c.stock"), file("b/d/e.plan"), file("f.plan"));
		file("notes.txt");
		file("plan");
		file("g.plan.bak");
		file(".hidden/h.plan");
		file("b/.git/i.plan");
		assertEquals(documents, ShopFolder.documents(folder));
	}

	@Test
	void theTopMayBeHidden() throws IOException, UnreadableException {
		assertEquals(List.of(file(".shop/a.keys")), ShopFolder.documents(folder.resolve(".shop")));
	}

	@Test
	void linksToFoldersAreNotFollowed() throws IOException, UnreadableException {
		file("outside/a.keys");
		Path inside = file("shop/b.keys");
		Files.createSymbolicLink(folder.resolve("shop/link"), folder.resolve("outside"));
		Files.createSymbolicLink(folder.resolve("shop/circle"), folder.resolve("shop"));
		assertEquals(List.of(inside), ShopFolder.documents(folder.resolve("shop")));
	}

	@Test
	void aMissingFolderHasNoDocuments() throws UnreadableException {
		assertEquals(List.of(), ShopFolder.documents(folder.resolve("missing")));
	}

	@Test
	void tooManyFilesAreRefused() throws IOException {
		for (int count = 0; count <= ShopFolder.MOST_FILES; count++) {
			Files.createFile(folder.resolve(count + ".plan"));
		}
		assertThrows(UnreadableException.class, () -> ShopFolder.documents(folder));
	}

	@Test
	void documentsAreKnownByTheirExtension() {
		assertTrue(ShopFolder.isDocument(Path.of("a.keys")));
		assertTrue(ShopFolder.isDocument(Path.of("a.b.plan")));
		assertFalse(ShopFolder.isDocument(Path.of("a.plans")));
		assertFalse(ShopFolder.isDocument(Path.of("a.PLAN")));
		assertFalse(ShopFolder.isDocument(Path.of("plan")));
		assertFalse(ShopFolder.isDocument(Path.of(".plan")));
	}
}

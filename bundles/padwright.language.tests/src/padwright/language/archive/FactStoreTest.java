package padwright.language.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.language.TestShop;
import padwright.language.files.UnreadableException;
import padwright.language.shop.ShopFolder;

/** Only what changed is read again. */
class FactStoreTest {

	private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

	@TempDir
	private Path folder;
	private Path shop;
	private final List<String> read = Collections.synchronizedList(new ArrayList<>());
	private final List<String> unreadable = new ArrayList<>();

	@BeforeEach
	void writeAShop() throws IOException {
		shop = Files.createDirectory(folder.resolve("shop"));
		write("a.keys", "system S {\n\tkey A open by L1\n}\n");
		write("b.plan", "plan B for S {\n}\nplan C for S {\n}\n");
		write("d.plan", "plan D for S {\n}\n");
	}

	private void write(String name, String text) throws IOException {
		Files.setLastModifiedTime(Files.writeString(shop.resolve(name), text), LONG_AGO);
	}

	private FactStore<String> open() {
		return FactStore.open(folder.resolve("kept"), "1", DataInput::readUTF, DataOutput::writeUTF);
	}

	private List<String> names() throws IOException, UnreadableException {
		read.clear();
		unreadable.clear();
		FactStore<String> store = open();
		List<Path> all = ShopFolder.documents(shop);
		List<String> names = new PlanReading(shop, all, () -> TestShop.LANGUAGE, 1).of(all, plan -> {
			read.add(plan.getName());
			return plan.getName();
		}, store, (file, why) -> unreadable.add(file.getFileName().toString()));
		store.save();
		return names;
	}

	@Test
	void whatDidNotChangeIsNotReadAgain() throws IOException, UnreadableException {
		assertEquals(List.of("B", "C", "D"), names());
		assertEquals(List.of("B", "C", "D"), read);
		assertEquals(List.of("B", "C", "D"), names());
		assertEquals(List.of(), read);
		write("d.plan", "plan E for S {\n}\n");
		assertEquals(List.of("B", "C", "E"), names());
		assertEquals(List.of("E"), read);
	}

	@Test
	void afterAChangeOfASystemAllPlansAreRead() throws IOException, UnreadableException {
		names();
		write("a.keys", "system S {\n\tkey A closed by L1\n}\n");
		assertEquals(List.of("B", "C", "D"), names());
		assertEquals(List.of("B", "C", "D"), read);
	}

	@Test
	void aFileThatCannotBeReadIsToldEachTimeAndReadOnceItCan() throws IOException, UnreadableException {
		Files.write(shop.resolve("d.plan"), new byte[] { (byte) 0xff, 0, 1 });
		assertEquals(List.of("B", "C"), names());
		assertEquals(List.of("d.plan"), unreadable);
		assertEquals(List.of("B", "C"), names());
		assertTrue(read.isEmpty() && unreadable.equals(List.of("d.plan")), unreadable.toString());
		write("d.plan", "plan D for S {\n}\n");
		assertEquals(List.of("B", "C", "D"), names());
		assertEquals(List.of("D"), read);
	}
}

package padwright.language.ide.server;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.xtext.ide.server.Document;

import com.google.inject.Injector;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.shop.Shop;
import padwright.language.shop.ShopFinding;

/** An editor in which somebody types at random into all files of a small shop. */
final class EditWalk implements AutoCloseable {

	private static final Map<String, String> FILES = Map.of("mini.keys",
			"system Mini {\n\tkey A hole 14 mm cup 17.5 mm deep 2.95 mm\n\tkey B closes A\n\tnote D4 : A\n}\n", "more.keys",
			"system More based on Mini {\n\tchange A hole 15 mm\n\tkey C\n\tremove B\n}\n", "bench.stock",
			"stock Bench {\n\tmaterial m { }\n\tpad P { thick 98 thou }\n\tfilm F m { 0.5 1 2 5 thou }\n\tfeeler H 0.5 thou\n"
					+ "\trule \"x\" warn when pad.thick < 90 thou\n}\n", "spring.plan",
			"plan Spring for More with Bench {\n\tfit P with F\n\tread at 12 3 6 9\n\tkey A empty 15 15 15 15 felt . . . 1\n"
					+ "\tkey C felt . . . . shim none\n}\n");
	private static final String[] TYPED = { "\n", " ", "key A ", "key C", "}", "{", "0.5 ", "// ", "Mini", "More", "Bench",
			"x", "closes A ", "\"", "felt . ", "plan ", "system ", "based on Mini", "remove A", "15", "\t", "." };

	private final Random random;
	private final TestShop shop;
	private final Connection editor;
	private final Injector language = new PadwrightStandaloneSetup().createInjector();
	private final List<String> names = FILES.keySet().stream().sorted().toList();
	private final Map<String, Document> texts = new HashMap<>();

	EditWalk(Path folder, long seed) throws Exception {
		random = new Random(seed);
		shop = TestShop.empty(folder.resolve("shop"));
		for (String name : names) {
			shop.write(name, FILES.get(name));
			texts.put(name, new Document(1, FILES.get(name)));
		}
		editor = Connection.open(shop.folder());
		names.forEach(name -> editor.type(shop.file(name), FILES.get(name)));
	}

	/** Types once; now and again a file is put back to what it was. */
	void edit() {
		String name = names.get(random.nextInt(names.size()));
		Document document = texts.get(name);
		int length = document.getContents().length();
		int start = random.nextInt(length + 1);
		int end = Math.min(length, start + (random.nextInt(3) == 0 ? random.nextInt(6) : 0));
		boolean back = random.nextInt(12) == 0;
		TextDocumentContentChangeEvent change = back ? new TextDocumentContentChangeEvent(FILES.get(name))
				: new TextDocumentContentChangeEvent(
						new Range(document.getPosition(start), document.getPosition(end)), TYPED[random.nextInt(TYPED.length)]);
		Document edited = back ? new Document(document.getVersion() + 1, FILES.get(name))
				: document.applyTextDocumentChanges(List.of(change));
		texts.put(name, edited);
		editor.server().getTextDocumentService().didChange(new DidChangeTextDocumentParams(
				new VersionedTextDocumentIdentifier(Connection.uri(shop.file(name)), edited.getVersion()), List.of(change)));
	}

	/** What the editor was told of all files, and what a fresh look at the same texts finds. */
	List<List<String>> toldAndFresh() throws Exception {
		editor.get(editor.server().getTextDocumentService()
				.documentSymbol(new DocumentSymbolParams(Connection.document(shop.file("mini.keys")))));
		List<String> told = new ArrayList<>();
		for (String name : names) {
			editor.client().known(Connection.uri(shop.file(name))).stream().map(found -> told(name, found)).forEach(told::add);
		}
		return List.of(told.stream().sorted().toList(), fresh());
	}

	private static String told(String name, Diagnostic found) {
		return name + ":" + (found.getRange().getStart().getLine() + 1) + " " + found.getCode().getLeft();
	}

	private List<String> fresh() {
		Map<Path, String> now = new HashMap<>();
		names.forEach(name -> now.put(shop.file(name), texts.get(name).getContents()));
		Shop whole = Shop.open(language, now.keySet().stream().sorted().toList(), now);
		return names.stream().flatMap(name -> whole.findings(shop.file(name)).stream()).map(EditWalk::fresh).sorted()
				.toList();
	}

	private static String fresh(ShopFinding found) {
		return found.file().getFileName() + ":" + found.line() + " " + found.code();
	}

	String texts() {
		StringBuilder all = new StringBuilder();
		names.forEach(name -> all.append("-- ").append(name).append('\n').append(texts.get(name).getContents()).append('\n'));
		return all.toString();
	}

	@Override
	public void close() throws Exception {
		editor.close();
	}

	/** EditWalk EDITS EVERY: walks for long, and looks after every so many edits. */
	public static void main(String[] arguments) throws Exception {
		Path folder = Files.createTempDirectory("walk");
		int edits = Integer.parseInt(arguments[0]);
		int every = Integer.parseInt(arguments[1]);
		int wrong = 0;
		try (EditWalk walk = new EditWalk(folder, 1)) {
			for (int edit = 1; edit <= edits; edit++) {
				walk.edit();
				if (edit % every == 0) {
					List<List<String>> both = walk.toldAndFresh();
					if (!both.get(0).equals(both.get(1)) && wrong++ < 3) {
						System.out.println("edit " + edit + "\ntold  " + both.get(0) + "\nfresh " + both.get(1) + "\n" + walk.texts());
					}
				}
			}
		}
		try (Stream<Path> below = Files.walk(folder)) {
			below.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
		}
		System.out.println(edits + " edits, " + edits / every + " looks, " + wrong + " wrong");
		System.exit(wrong == 0 ? 0 : 1);
	}
}

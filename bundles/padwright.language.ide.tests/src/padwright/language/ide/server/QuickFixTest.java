package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.workup.checks.IssueCodes;

/** Every fix takes its finding away. */
class QuickFixTest {

	private static final String STOCK = """
			stock Bench {
				material paper { hazard H315 }
				kind foam { }
				kind rigid { }
				pad Soft { thick 121 thou sinks 5 thou diameters 16 mm }
				pad Big { thick 121 thou diameters 30 mm }
				pad Hard { thick 98 thou needs backing }
				backing Disc paper 20 thou
				film Clear paper { 0.5 1 2 5 7.5 thou }
				feeler Half 0.5 thou
				feeler One 1 thou
				rule "no paper" warn when pad is Big
			}
			""";
	private static final String SYSTEM = """
			system Mini {
				key A closes B cup 16 mm deep 2.96 mm
				key B cup 16 mm
				key C cup 16 mm
				key D cup 16 mm
			}
			system More based on Mini {
				key E
			}
			""";
	private static final String PLAN = """
			plan Work for Mini with Bench {
				bed 13..16 thou
				fit Soft with Clear
				read at 12 3 6 9
				key A
				key B
			}
			""";

	@TempDir
	private Path folder;
	private TestShop shop;
	private Connection editor;

	@BeforeEach
	void openShop() throws Exception {
		shop = TestShop.empty(folder.resolve("shop"));
		shop.write("bench.stock", STOCK);
		shop.write("mini.keys", SYSTEM);
		shop.write("work.plan", PLAN);
		editor = Connection.open(shop.folder());
	}

	@AfterEach
	void close() throws Exception {
		editor.close();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			link | key A | key Aa | Change to A | key A
			unit-suspect | key A | key A empty 15 mm | Take the whole row for thou | key A empty 15 thou
			unit-suspect | key A | key A empty 15 mm | Convert 15 thou to 0.381 mm | key A empty 0.381 mm
			too-fine | key A | key A empty 15 15 15 15.123456789 | Round to 15.12 | key A empty 15 15 15 15.12
			range-empty | bed 13..16 | bed 16..13 | Change to 13..16 | bed 13..16
			hour-twice | read at 12 3 6 9 | read at 12 3 6 6 9 | Remove this 6 | read at 12 3 6 9
			film-not-stocked | key A | key A stack 7.5 2.25 | Use 2 thou | key A stack 7.5 2
			film-not-stocked | key A | key A felt . shim 0.7 from 2 to 4 | Use 0.5 thou | key A felt . shim 0.5 from 2 to 4
			stack-height | key A | key A empty 15 stack 5 | Use 7.5 7.5 0.5 | key A empty 15 stack 7.5 7.5 0.5
			reading-unknown-leaf | key A | key A felt . 0.7 . . | Use 1 thou | key A felt . 1 . .
			dash-not-graded | 9 | 9 key A felt . . - . | Change to . | 9 key A felt . . . .
			dash-not-graded | 9 | 9 key A felt . . - . | Grade the readings of this plan | 9 graded key A felt . . - .
			out-not-in-place | key A | key A felt . 1 . . shim 1 from 2 to 4 felt . . . . out 0.5 from 2 to 5 | \
			Take out 1 from 2 to 4 | key A felt . 1 . . shim 1 from 2 to 4 felt . . . . out 1 from 2 to 4
			backing-missing | key A | key A fit Hard | Put it on Disc | key A fit Hard on Disc
			pad-diameter | key A | key A fit Big | Fit Soft | key A fit Soft
			syntax | key A | key A felt . . . . empty 15 | Put the parts in their order | key A empty 15 felt . . . .
			syntax | key A | key A empty 15 measured 120 thou found torn felt . . . . shim none felt . . . . stack 7.5 wear 1 thou | \
			Put the parts in their order | \
			key A found torn wear 1 thou measured 120 thou empty 15 stack 7.5 felt . . . . shim none felt . . . .
			syntax | key A | key A felt . . . . shim 0.5 from 2 to 16 | Change to 4 | key A felt . . . . shim 0.5 from 2 to 4
			syntax | read at 12 3 6 9 | read at 12 3 18 9 | Change to 6 | read at 12 3 6 9
			syntax | key A | key A felt . . . . shim 0.5 from 2 | Complete the piece: to 4 | key A felt . . . . shim 0.5 from 2 to 4
			syntax | key A | key A felt . . . . shim 0.5 from 11 to | Complete the piece: to 1 | key A felt . . . . shim 0.5 from 11 to 1
			syntax | key A | key A felt . . . . shim 0.5 from | Take the unfinished piece away | key A felt . . . .
			syntax | key A | key A felt . . . . shim 1 from 8 to 9, 0.5 | Take the unfinished piece away | key A felt . . . . shim 1 from 8 to 9
			""")
	void inAPlan(String code, String from, String wrong, String title, String mended) throws Exception {
		assertEquals(PLAN.replace(from, mended), cured("work.plan", PLAN.replace(from, wrong), code, title));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			link | closes B | closes Bb | Change to B | closes B
			unit-suspect | A closes B cup 16 mm | A closes B cup 16 thou | Convert to 16 mm | A closes B cup 16 mm
			duplicate-key | key E | key A \\"again\\" open | Change the inherited key A | change A open
			syntax | based on Mini | extends Mini | Write based on | based on Mini
			syntax | key B cup 16 mm | key B cup 16 mm french | Write perforated | key B cup 16 mm perforated
			syntax | key B cup | key open cup | Write \"open\" | key "open" cup
			syntax | key B cup 16 mm | key B "at // on" cup 16 mm held by bush closes C, D when A is pressed open hole 12 mm | \
			Put the parts in their order | \
			key B "at // on" open closes C, D when A is pressed hole 12 mm cup 16 mm held by bush
			syntax | key D cup 16 mm | key D at 20 mm cup 16 mm | Put the parts in their order | key D cup 16 mm at 20 mm
			link | key E | key E by R1 | Declare the touch R1 | touch R1;	key E by R1
			link | key E | key E on foot | Declare the joint foot | joint foot;	key E on foot
			""")
	void inASystem(String code, String from, String wrong, String title, String mended) throws Exception {
		String text = cured("mini.keys", SYSTEM.replace(from, wrong.replace("\\", "")), code, title.replace("\\", ""));
		assertEquals(SYSTEM.replace(from, mended.replace(";", "\n")), text);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			link | film Clear paper | film Clear papers | Change to paper | film Clear paper
			hazard-unknown | H315 | HH315 | Change to H315 | H315
			rule-property-unknown | when pad is Big | when pads is Big | Change to pad | when pad is Big
			rule-property-unknown | when pad is Big | when stabiliser is Disc | Change to backing | when backing is Disc
			rule-value | when pad is Big | when pad.kind is engineered | Change to rigid | when pad.kind is rigid
			link | pad Hard { | pad Hard { kind engineered | Change to rigid | pad Hard { kind rigid
			syntax | backing Disc | stabiliser Disc | Write backing | backing Disc
			syntax | needs backing | needs stabiliser | Write backing | needs backing
			rule-value | when pad is Big | when pad.kind is foams | Change to foam | when pad.kind is foam
			link | pad Hard { | pad Hard { kind foams | Change to foam | pad Hard { kind foam
			rule-operator | when pad is Big | when pad < Big | Change to isnt | when pad isnt Big
			syntax | pad Hard { thick 98 thou needs backing | pad Hard { needs backing skin paper 1 thou thick 98 thou kind rigid | \
			Put the parts in their order | pad Hard { kind rigid skin paper 1 thou thick 98 thou needs backing
			unit-suspect | diameters 16 mm | diameters 16 thou | Take the whole row for mm | diameters 16 mm
			""")
	void inAStock(String code, String from, String wrong, String title, String mended) throws Exception {
		assertEquals(STOCK.replace(from, mended), cured("bench.stock", STOCK.replace(from, wrong), code, title));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			pad Hard { kind engineered | Write rigid | pad Hard { kind rigid
			pad Hard { kind puffy | Declare the kind of pad puffy | kind puffy { };pad Hard { kind puffy
			""")
	void kindsOfAStockWithoutAny(String wrong, String title, String mended) throws Exception {
		String bare = STOCK.replaceAll("\t+kind .*\n", "");
		Path file = shop.file("bench.stock");
		String before = bare.replace("pad Hard {", wrong);
		editor.type(file, before);
		Diagnostic finding = editor.client().diagnostics(Connection.uri(file), all -> count(all, "link") > 0).stream()
				.filter(is("link")).findFirst().orElseThrow();
		CodeAction fix = offered(file, finding).get(0);
		assertEquals(title, fix.getTitle());
		assertEquals(bare.replace("pad Hard {", mended.replace(";", "\n\t")),
				Texts.apply(Texts.of(fix.getEdit(), Connection.uri(file)), before));
	}

	/** A comment stays with the clause before it, and one behind the whole row stays there. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			felt . . . . // first;\t\tempty 15 // dry | ;\t\tempty 15 felt . . . . // first // dry
			felt . . . . // first;\t\tempty 15;\t\tfit Soft | ;\t\tfit Soft;\t\tempty 15 felt . . . . // first
			empty 15 // dry;\t\tfelt . . . .;\t\tfound torn // last | ;\t\tfound torn empty 15 // dry;\t\tfelt . . . . // last
			stack 7.5 // from the;\t\t// cup;\t\tfit Soft empty 15 | ;\t\tfit Soft empty 15 stack 7.5 // from the;\t\t// cup
			""")
	void partsOfARowAreOrderedWithTheirComments(String wrong, String mended) throws Exception {
		String before = PLAN.replace("key A", "key A " + lines(wrong));
		String after = cured("work.plan", before, IssueCodes.SYNTAX, "Put the parts in their order");
		assertEquals(PLAN.replace("key A", "key A" + (mended.startsWith(";") ? "" : " ") + lines(mended)), after);
		assertEquals(words(before), words(after));
	}

	private static String lines(String row) {
		return row.replace(";", "\n").replace("\\t", "\t");
	}

	private static List<String> words(String text) {
		return Stream.of(text.split("\\s+")).sorted().toList();
	}

	@Test
	void padThatFitsNoCupIsReplacedForTheKeyAtHand() throws Exception {
		String before = PLAN.replace("fit Soft", "fit Big");
		assertEquals(before.replace("key A", "key A fit Hard on Disc"),
				cured("work.plan", before, IssueCodes.PAD_DIAMETER, "Fit Hard on Disc"));
	}

	@Test
	void readingsOfASecondRowMoveToTheFirst() throws Exception {
		String before = PLAN.replace("key B", "key B\n\tkey A felt . . . .");
		assertEquals(PLAN.replace("key A", "key A felt . . . ."),
				cured("work.plan", before, IssueCodes.DUPLICATE_SERVICE, "Move these readings to the first row"));
	}

	@Test
	void regulationNamesAKeyThatIsDriven() throws Exception {
		String before = PLAN.replace("key B", "key B\n\tregulate A > C : 1 thou light at driven");
		assertEquals(before.replace("> C", "> B"),
				cured("work.plan", before, IssueCodes.NOT_COUPLED, "Change to B"));
	}

	@Test
	void rowOfARemovedKeyGoes() throws Exception {
		Path keys = shop.file("mini.keys");
		editor.type(keys, SYSTEM.replace("key E", "remove A"));
		String before = PLAN.replace("for Mini", "for More");
		assertEquals(before.replace("\tkey A\n", ""),
				cured("work.plan", before, IssueCodes.DRIVEN_KEY_MISSING, "Remove this row"));
	}

	/** The text with the fix of a title in it, once the server has told that the finding is gone. */
	private String cured(String name, String before, String code, String title) throws Exception {
		Path file = shop.file(name);
		String uri = Connection.uri(file);
		editor.type(file, before);
		List<Diagnostic> found = editor.client().diagnostics(uri, all -> count(all, code) > 0);
		Diagnostic finding = found.stream().filter(is(code)).findFirst().orElseThrow();
		CodeAction fix = offered(file, finding).stream().filter(action -> action.getTitle().equals(title)).findFirst()
				.orElseThrow(() -> new AssertionError(title + " is not offered"));
		String after = Texts.apply(Texts.of(fix.getEdit(), uri), before);
		editor.retype(file, after);
		editor.client().diagnostics(uri, all -> count(all, code) < count(found, code));
		return after;
	}

	private List<CodeAction> offered(Path file, Diagnostic finding) throws Exception {
		CodeActionContext context = new CodeActionContext(List.of(finding), List.of(CodeActionKind.QuickFix));
		return editor.get(editor.server().getTextDocumentService().codeAction(
				new CodeActionParams(Connection.document(file), finding.getRange(), context))).stream()
				.map(action -> action.getRight()).toList();
	}

	private static long count(List<Diagnostic> findings, String code) {
		return findings.stream().filter(is(code)).count();
	}

	private static Predicate<Diagnostic> is(String code) {
		return diagnostic -> diagnostic.getCode().getLeft().equals(code);
	}
}

package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.language.TestShop;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage;
import padwright.model.keysystem.Purpose;
import padwright.model.keysystem.Titled;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveSystem;

/** Each edit as the text before and after it. */
class SystemEditsTest {

	private static final String BASE = """
			unit mm
			system Base {
				touch L1
				key A open by L1 closes B through screw "UNM 1.00" play 0.05 hole 13 cup 16 at 100
				key B open hole 13 cup 16 at 120
				key C open hole 13 cup 16 at 140
				note C4 : L1
			}
			""";

	/** The named things of the system at hand, its own and inherited. */
	private record Opened(KeySystem system) {

		<T extends Titled> T find(String name, Class<T> kind) {
			EffectiveSystem all = EffectiveSystem.of(system);
			return Stream.of(all.keys(), all.touches(), all.holes(), all.rods(), all.joints())
					.flatMap(each -> each.stream()).map(each -> (Titled) each.definition())
					.filter(each -> kind.isInstance(each) && each.getName().equals(name)).map(kind::cast).findFirst()
					.orElseThrow();
		}

		Key key(String name) {
			return find(name, Key.class);
		}

		Touch touch(String name) {
			return find(name, Touch.class);
		}
	}

	private static void changes(String before, BiFunction<SystemEdits, Opened, List<TextEdit>> edit, String after) {
		TestShop shop = new TestShop().with("base.keys", BASE).with("a.keys", before);
		KeySystem system = shop.document("a.keys").getSystems().get(0);
		String edited = TextEdit.apply(edit.apply(new SystemEdits(system), new Opened(system)), before);
		assertEquals(after, edited);
		assertFalse(TestShop.of("b.keys", edited).resource("b.keys").getParseResult().hasSyntaxErrors());
	}

	private static Map<String, String> clauses(String... featuresAndText) {
		Map<String, String> clauses = new LinkedHashMap<>();
		for (int index = 0; index < featuresAndText.length; index += 2) {
			clauses.put(featuresAndText[index], featuresAndText[index + 1]);
		}
		return clauses;
	}

	@Test
	void aStatementComesBehindTheLastOfItsKindAndItsRemark() {
		changes("system S {\n\ttouch L1 // left\n\n\tkey A by L1\n}\n",
				(edits, at) -> edits.add(Touch.class, "touch L2"),
				"system S {\n\ttouch L1 // left\n\ttouch L2\n\n\tkey A by L1\n}\n");
		changes("system S {\n\ttouch L1\n\n\tkey A by L1\n}\n", (edits, at) -> edits.add(Hole.class, "hole H 6"),
				"system S {\n\ttouch L1\n\n\thole H 6\n\n\tkey A by L1\n}\n");
	}

	@Test
	void anEmptySystemGetsItsFirstStatement() {
		changes("system S {\n}\n", (edits, at) -> edits.add(Key.class, "key A"), "system S {\n\tkey A\n}\n");
		changes("system S {}", (edits, at) -> edits.add(Key.class, "key A"), "system S {\n\tkey A\n}");
		changes("system S {\r\n\tpitch 442 Hz // old\r\n}\r\n", (edits, at) -> edits.add(Key.class, "key A"),
				"system S {\r\n\tpitch 442 Hz // old\r\n\tkey A\r\n}\r\n");
		changes("system S { touch L1 }\n", (edits, at) -> edits.add(Touch.class, "touch L2"),
				"system S { touch L1\n\ttouch L2\n }\n");
	}

	@Test
	void aPlaceIsReplacedOrAddedWhereItBelongs() {
		changes("unit mm\nsystem S {\n\tkey A hole 3 at 10 // one\n\tkey B hole 3\n}\n",
				(edits, at) -> edits.put(at.key("A"), clauses("position", "at 10.1", "around", "around 20")),
				"unit mm\nsystem S {\n\tkey A hole 3 at 10.1 around 20 // one\n\tkey B hole 3\n}\n");
		changes("unit mm\nsystem S {\n\tkey A hole 3 at 10 // one\n\tkey B hole 3\n}\n",
				(edits, at) -> edits.put(at.key("B"), clauses("position", "at 12", "around", "around 20")),
				"unit mm\nsystem S {\n\tkey A hole 3 at 10 // one\n\tkey B hole 3 at 12 around 20\n}\n");
	}

	@Test
	void theFirstChangeOfWhatIsInheritedIsWrittenAndThenChanged() {
		String bare = "unit mm\nsystem S based on Base {\n}\n";
		String changed = "unit mm\nsystem S based on Base {\n\tchange A at 101\n}\n";
		changes(bare, (edits, at) -> edits.put(at.key("A"), clauses("position", "at 101")), changed);
		changes(changed, (edits, at) -> edits.put(at.key("A"), clauses("position", "at 102", "around", "around 5")),
				"unit mm\nsystem S based on Base {\n\tchange A at 102 around 5\n}\n");
		changes(changed, (edits, at) -> edits.put(at.touch("L1"), clauses("position", "at 90")),
				"unit mm\nsystem S based on Base {\n\tchange A at 101\n\tchange touch L1 at 90\n}\n");
		changes(changed, (edits, at) -> edits.asInherited(List.of(at.key("A"))), bare);
	}

	@Test
	void aCouplingIsAddedToTheOthers() {
		String own = "system S {\n\tkey A // one\n\tkey B\n\tkey C\n}\n";
		var closes = KeySystemPackage.Literals.KEY_FEATURES__CLOSES;
		changes(own, (edits, at) -> edits.couple(at.key("A"), at.key("B"), closes),
				"system S {\n\tkey A closes B // one\n\tkey B\n\tkey C\n}\n");
		changes("system S {\n\tkey A closes B hole 3\n\tkey B\n\tkey C\n}\n",
				(edits, at) -> edits.couple(at.key("A"), at.key("C"), closes),
				"system S {\n\tkey A closes B, C hole 3\n\tkey B\n\tkey C\n}\n");
		changes("unit mm\nsystem S based on Base {\n}\n",
				(edits, at) -> edits.couple(at.key("A"), at.key("C"), closes),
				"unit mm\nsystem S based on Base {\n\tchange A closes B through screw \"UNM 1.00\" play 0.05, C\n}\n");
		changes("system S based on Base {\n\tchange A closes nothing // off\n}\n",
				(edits, at) -> edits.couple(at.key("A"), at.key("C"), closes),
				"system S based on Base {\n\tchange A closes C // off\n}\n");
	}

	@Test
	void aTouchPressesAKeyOrCoversAHole() {
		changes("system S {\n\ttouch L1\n\tkey A hole 3\n\thole H 6\n}\n",
				(edits, at) -> edits.press(at.touch("L1"), at.key("A")),
				"system S {\n\ttouch L1\n\tkey A by L1 hole 3\n\thole H 6\n}\n");
		changes("system S {\n\ttouch L1\n\tkey A hole 3\n\thole H 6\n}\n",
				(edits, at) -> edits.cover(at.touch("L1"), at.find("H", Hole.class)),
				"system S {\n\ttouch L1\n\tkey A hole 3\n\thole H 6 by L1\n}\n");
	}

	@Test
	void whatIsDeletedIsNamedNowhereAnyMore() {
		changes("""
				system S {
					touch L1
					touch L2 // goes
					key A by L2, L1 closes B, C hole 3
					key B by L2
					key C hole 3 // stays
					rod R carries A, B pinned, C
					note C4 : L1 half L2
				}
				""", (edits, at) -> edits.delete(List.of(at.touch("L2"), at.key("B"))), """
				system S {
					touch L1
					// goes
					key A by L1 closes C hole 3
					key C hole 3 // stays
					rod R carries A, C
					note C4 : L1
				}
				""");
	}

	@Test
	void whatIsInheritedIsRemoved() {
		changes("unit mm\nsystem S based on Base {\n\tchange A at 101\n\tkey D closes A\n}\n",
				(edits, at) -> edits.delete(List.of(at.key("A"))),
				"unit mm\nsystem S based on Base {\n\tremove A\n\tkey D\n}\n");
	}

	@Test
	void lengthsAreWrittenInTheUnitOfTheDocument() {
		for (String unit : List.of("mm", "thou")) {
			TestShop shop = TestShop.of("a.keys", "unit " + unit + "\nsystem S {\n}\n");
			SystemWords words = new SystemWords(shop.document("a.keys").getSystems().get(0));
			assertEquals(unit.equals("mm") ? "25.4" : "25.4 mm", words.length(Length.millimetres("25.4")));
		}
	}

	private static void writes(String before, NoteEdits.Written fingering, String after) {
		TestShop shop = new TestShop().with("base.keys", BASE).with("a.keys", before);
		assertEquals(after, TextEdit.apply(
				new NoteEdits(shop.document("a.keys").getSystems().get(0)).write(fingering), before));
	}

	private static List<NoteEdits.Pressed> presses(String system, String touch, boolean half) {
		TestShop shop = new TestShop().with("base.keys", BASE).with("a.keys", system);
		return List.of(new NoteEdits.Pressed(
				new Opened(shop.document("a.keys").getSystems().get(0)).touch(touch), half));
	}

	@Test
	void aFingeringIsWrittenDown() {
		String own = "system S {\n\ttouch L1\n\n\tnote C4 : L1 // low\n}\n";
		writes(own, new NoteEdits.Written("C4", Optional.empty(), Purpose.USUAL, presses(own, "L1", true)),
				"system S {\n\ttouch L1\n\n\tnote C4 : half L1 // low\n}\n");
		writes(own, new NoteEdits.Written("C4", Optional.empty(), Purpose.USUAL, List.of()),
				"system S {\n\ttouch L1\n\n\tnote C4 : // low\n}\n");
		writes(own, new NoteEdits.Written("D4", Optional.of("side"), Purpose.TRILL, presses(own, "L1", false)),
				"system S {\n\ttouch L1\n\n\tnote C4 : L1 // low\n\tnote D4 \"side\" trill : L1\n}\n");
	}

	@Test
	void anAlternateOfAnInheritedNoteBringsTheInheritedOnesAlong() {
		String bare = "system S based on Base {\n}\n";
		writes(bare, new NoteEdits.Written("C4", Optional.empty(), Purpose.ALTERNATE, presses(bare, "L1", true)),
				"system S based on Base {\n\tnote C4 : L1\n\tnote C4 alternate : half L1\n}\n");
	}
}

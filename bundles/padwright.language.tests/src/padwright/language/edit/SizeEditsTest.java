package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import padwright.engine.length.Length;
import padwright.language.TestShop;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;
import padwright.model.systems.EffectiveJoint.Width;
import padwright.model.systems.EffectiveSystem;

/** Each edit as the text before and after it. */
class SizeEditsTest {

	private static final String BASE = """
			unit mm
			system Base {
				joint body long 300 bore 19
				hole H 7 rim 1 at 50
				key A hole 13 rim 1 cup 16 deep 3 at 100
			}
			""";
	private static final String HEIR = "unit mm\nsystem S based on Base {\n}\n";

	private static void changes(String before, Function<KeySystem, List<TextEdit>> edit, String after) {
		TestShop shop = new TestShop().with("base.keys", BASE).with("a.keys", before);
		String edited = TextEdit.apply(edit.apply(shop.document("a.keys").getSystems().get(0)), before);
		assertEquals(after, edited);
		assertFalse(TestShop.of("b.keys", edited).resource("b.keys").getParseResult().hasSyntaxErrors());
	}

	private static Titled thing(KeySystem system, String name) {
		EffectiveSystem all = EffectiveSystem.of(system);
		return Stream.of(all.keys(), all.holes(), all.joints()).flatMap(each -> each.stream())
				.map(each -> (Titled) each.definition()).filter(each -> each.getName().equals(name)).findFirst()
				.orElseThrow();
	}

	private static Function<KeySystem, List<TextEdit>> size(String name, PartSize size, String value) {
		return system -> new SizeEdits(system).put(thing(system, name), size, Length.millimetres(value),
				Length.millimetres("13"));
	}

	private static Width width(String diameter, String at) {
		return new Width(Optional.of(at).filter(place -> !place.isEmpty()).map(Length::millimetres),
				Length.millimetres(diameter));
	}

	@Test
	void oneSizeIsReplacedAndTheOthersStay() {
		String own = "unit mm\nsystem S {\n\tkey A hole 13 rim 1 drawn cup 16 deep 3 at 9 // one\n}\n";
		changes(own, size("A", PartSize.HOLE, "13.4"), own.replace("hole 13", "hole 13.4"));
		changes(own, size("A", PartSize.RIM, "1.2"), own.replace("rim 1", "rim 1.2"));
		changes(own, size("A", PartSize.CHIMNEY, "2.5"), own.replace("rim 1", "rim 1 chimney 2.5"));
		changes(own, size("A", PartSize.CUP, "17"), own.replace("cup 16", "cup 17"));
		changes(own, size("A", PartSize.DEPTH, "3.1"), own.replace("deep 3", "deep 3.1"));
		changes(own, size("A", PartSize.RISE, "2.5"), own.replace(" at 9", " rise 2.5 at 9"));
		changes(own, size("A", PartSize.ARM, "14"), own.replace(" at 9", " arm 14 at 9"));
	}

	@Test
	void aPartThatIsMissingIsBegun() {
		String bare = "unit mm\nsystem S {\n\tkey A at 9\n}\n";
		changes(bare, size("A", PartSize.CUP, "17"), bare.replace("A at", "A cup 17 at"));
		changes(bare, size("A", PartSize.RIM, "1"), bare.replace("A at", "A hole 13 rim 1 at"));
	}

	@Test
	void whatIsInheritedIsChangedHere() {
		String changed = HEIR.replace("}", "\tchange A hole 13 rim 1.2\n}");
		changes(HEIR, size("A", PartSize.RIM, "1.2"), changed);
		changes(changed, size("A", PartSize.CHIMNEY, "2"), changed.replace("1.2", "1.2 chimney 2"));
		changes(changed, size("A", PartSize.ARM, "14"), changed.replace("1.2", "1.2 arm 14"));
		changes(HEIR, size("H", PartSize.HOLE, "7.2"), HEIR.replace("}", "\tchange hole H 7.2\n}"));
	}

	@Test
	void aHoleOfItsOwnBeginsWithItsDiameter() {
		String own = "unit mm\nsystem S {\n\thole H 7 at 9\n}\n";
		changes(own, size("H", PartSize.HOLE, "7.2"), own.replace("H 7", "H 7.2"));
		changes(own, size("H", PartSize.RIM, "1"), own.replace("H 7", "H 7 rim 1"));
	}

	@Test
	void lengthsKeepTheUnitThatTheDocumentCannotSay() {
		String thou = "unit thou\nsystem S {\n\tkey A hole 500 at 9 mm\n}\n";
		changes(thou, size("A", PartSize.HOLE, "13.4"), thou.replace("500", "13.4 mm"));
	}

	@Test
	void theBoreIsWrittenPointByPoint() {
		String own = "unit mm\nsystem S {\n\tjoint body long 300 bore 19\n}\n";
		changes(own, system -> new SizeEdits(system).bore((Joint) thing(system, "body"),
				List.of(width("19", "0"), width("18.8", "100"))), own.replace("bore 19", "bore 19 at 0, 18.8 at 100"));
		changes(HEIR, system -> new SizeEdits(system).bore((Joint) thing(system, "body"), List.of(width("18.5", ""))),
				HEIR.replace("}", "\tchange joint body bore 18.5\n}"));
	}
}

package padwright.views.layout;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.drawing.scene.Element;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.views.GuidePicture;
import padwright.views.GuideText;
import padwright.views.Palette;
import padwright.views.hole.HoleSectionEditing;
import padwright.views.hole.HoleSectionScene;
import padwright.views.scenes.Extent;
import padwright.views.sound.SoundScene;
import padwright.views.sound.SoundSession;
import padwright.views.sound.SoundWork;

/** The pictures of the guide that show what the views draw of its own systems are what they draw today. */
class GuideLayoutsTest {

	private static final Path FLUTE = Path.of("..", "..", "examples", "shop", "systems", "boehm.keys");
	private static final double WIDE = 170;
	private static final double NARROW = 110;
	/** As large as can be read on a page, mm. */
	private static final double LETTERS = 5;

	/** A system that a page shows, behind the flute that some are based on. */
	private static DrawnSystem onPage(String page, String first) throws IOException {
		String shown = GuideText.example(page, first);
		String system = shown.contains("system ") ? shown.substring(shown.indexOf("system ")) : "system Shown {\n" + shown + "}\n";
		return new DrawnSystem(Files.readString(FLUTE) + system);
	}

	/** Of a whole flute only the stretch that the page speaks of, in mm of the drawing. */
	@ParameterizedTest
	@CsvSource({
			"new-foot-joint.html, unit mm,                540, 36, 160, 68,  foot-layout",
			"own-layout.html,     unit mm,                360, 38, 200, 72,  own-layout",
			"instrument.html,     unit mm,                0,   0,  330, 155, small-layout",
			"systems.html,        joint head \"head joint, 243, 26, 260, 144, joints-layout" })
	void aLayoutIsUpToDate(String page, String first, double left, double top, double width, double height,
			String picture) throws IOException {
		DrawnSystem system = onPage(page, first);
		GuidePicture.assertUpToDate(picture, WIDE,
				() -> stretch(LayoutScene.draw(system.editing.picture().lettered(LETTERS), Palette.paper()), left, top, width, height));
	}

	/** Without what lies beside it. */
	private static Scene stretch(Scene whole, double left, double top, double width, double height) {
		List<Element> inside = whole.elements().stream().filter(element -> Extent.of(List.of(element)).filter(room -> room.right() > left
				&& room.left() < left + width && room.bottom() > top && room.top() < top + height).isPresent()).toList();
		return new Scene(whole.title(), width, height, List.of(Group.of(inside).at(-left, -top)));
	}

	@ParameterizedTest
	@CsvSource({
			"new-foot-joint.html, unit mm,  LowCs, foot-hole",
			"own-layout.html,     unit mm,  G,     own-hole",
			"instrument.html,     touch R1, G,     small-hole" })
	void aHoleIsUpToDate(String page, String first, String key, String picture) throws IOException {
		DrawnSystem system = onPage(page, first);
		system.editing.select(Set.of("key:" + key));
		HoleSectionEditing section = new HoleSectionEditing(() -> {
		}, edits -> {
		});
		section.show(system.layout());
		section.choose("key:" + key);
		GuidePicture.assertUpToDate(picture, NARROW, () -> HoleSectionScene.draw(section, Palette.paper()));
	}

	@Test
	void theSoundOfTheFluteIsUpToDate() throws IOException {
		DrawnSystem flute = new DrawnSystem(Files.readString(FLUTE));
		GuidePicture.assertUpToDate("sound-view", WIDE, () -> SoundScene.draw(heard(flute), Palette.paper(), 1.6));
	}

	private static SoundSession heard(DrawnSystem flute) {
		SoundSession session = new SoundSession();
		session.show(flute.layout().system(), flute.layout());
		SoundWork work = new SoundWork();
		session.accept(work.curve(session.wish().orElseThrow()));
		session.accept(work.scale(session.wish().orElseThrow()));
		return session;
	}
}

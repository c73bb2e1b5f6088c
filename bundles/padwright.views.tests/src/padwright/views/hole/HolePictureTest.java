package padwright.views.hole;

import java.io.IOException;

import org.junit.jupiter.api.Test;

import padwright.views.GuidePicture;
import padwright.views.Palette;
import padwright.views.layout.DrawnSystem;

/** The picture of the guide is what is drawn. */
class HolePictureTest {

	private static final double WIDTH = 110;
	private static final String FLUTE = """
			unit mm
			system Flute {
				joint body long 300 bore 19
				key A open hole 12.2 rim 1 chimney 2.5 cup 16.5 deep 2.95 hinge near rise 3 at 185
				rod Upper "upper rod" from 150 to 220 around 60 carries A
			}
			""";

	@Test
	void thePictureOfTheGuideIsUpToDate() throws IOException {
		HoleSectionEditing section = new HoleSectionEditing(() -> {
		}, edits -> {
		});
		section.show(new DrawnSystem(FLUTE).layout());
		GuidePicture.assertUpToDate("hole-section", WIDTH, () -> HoleSectionScene.draw(section, Palette.paper()));
	}
}

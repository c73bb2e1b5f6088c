package padwright.views.layout;

import java.io.IOException;
import java.util.Set;

import org.junit.jupiter.api.Test;

import padwright.views.GuidePicture;
import padwright.views.Palette;

/** The picture of the guide is what its tutorial comes to. */
class LayoutPictureTest {

	/** As large as can be read on a page, mm. */
	private static final double LETTERS = 5;
	private static final double WIDTH = 170;
	private static final String TUTORIAL = """
			unit mm
			system Mine {
				joint body long 300 bore 19
				touch T1 at 120 around 60
				key K1 open by T1 closes K2 hole 13 cup 16.5 at 120
				key K2 open hole 13 cup 16.5 at 152.5
				key K3 open hole 13 cup 16.5 at 180
			}
			""";

	@Test
	void thePictureOfTheGuideIsUpToDate() throws IOException {
		DrawnSystem mine = new DrawnSystem(TUTORIAL);
		mine.editing.select(Set.of("key:K2"));
		GuidePicture.assertUpToDate("layout", WIDTH,
				() -> LayoutScene.draw(mine.editing.picture().lettered(LETTERS), Palette.paper()));
	}
}

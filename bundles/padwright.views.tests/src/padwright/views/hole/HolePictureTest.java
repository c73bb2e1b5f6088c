package padwright.views.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

import padwright.drawing.svg.SvgWriter;
import padwright.views.Palette;
import padwright.views.layout.DrawnSystem;

/** The picture of the guide is what is drawn. */
class HolePictureTest {

	private static final Path PICTURE = Path.of("../padwright.guide/guide/pictures/hole-section.svg");
	private static final Path DRAWN = Path.of("target/fresh/hole-section.svg");
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
		StringWriter svg = new StringWriter();
		SvgWriter.write(svg, HoleSectionScene.draw(section, Palette.paper()));
		Files.createDirectories(DRAWN.getParent());
		Files.writeString(DRAWN, svg.toString());
		assertEquals(Files.readString(PICTURE), svg.toString());
	}
}

package padwright.drawing.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Hatch;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;

class SvgWriterTest {

	private static final String NASTY = "<b> & \"F♯\" ]]> 'x' \u0007 \uD834\uDD2B";
	private static final String PRINTED = "<b> & \"F♯\" ]]> 'x'   \uD834\uDD2B";

	@Test
	void whateverTextSaysComesBackFromAnXmlReader() throws Exception {
		Document document = parse(write(scene()));
		Element text = (Element) document.getElementsByTagName("text").item(0);
		assertEquals(PRINTED, text.getTextContent());
		Element group = (Element) document.getElementsByTagName("g").item(0);
		assertEquals("a\"<&b", group.getAttribute("data-id"));
		assertEquals("<tip>", group.getElementsByTagName("title").item(0).getTextContent());
	}

	@Test
	void hasItsRealSizeAndTitle() throws Exception {
		Element root = parse(write(scene())).getDocumentElement();
		assertEquals("http://www.w3.org/2000/svg", root.getNamespaceURI());
		assertEquals("50.5mm", root.getAttribute("width"));
		assertEquals("40mm", root.getAttribute("height"));
		assertEquals("0 0 50.5 40", root.getAttribute("viewBox"));
		assertEquals("A <title>", root.getElementsByTagName("title").item(0).getTextContent());
	}

	@Test
	void doesNotDependOnTheMachinesLanguage() {
		String expected = write(scene());
		Locale before = Locale.getDefault();
		try {
			for (String language : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva")) {
				Locale.setDefault(Locale.forLanguageTag(language));
				assertEquals(expected, write(scene()), language);
			}
		} finally {
			Locale.setDefault(before);
		}
	}

	@Test
	void aHatchIsClippedToItsOutline() throws Exception {
		Document document = parse(write(scene()));
		Element clip = (Element) document.getElementsByTagName("clipPath").item(0);
		assertTrue(write(scene()).contains("url(#" + clip.getAttribute("id") + ")"));
	}

	@Test
	void numbersAreShortDecimals() {
		assertEquals("0", SvgNumber.of(-0.0001));
		assertEquals("-0.5", SvgNumber.of(-0.5));
		assertEquals("1.25", SvgNumber.of(1.25));
		assertEquals("-12.005", SvgNumber.of(-12.0049));
		assertEquals("100", SvgNumber.of(99.9999));
		assertEquals("1000000", SvgNumber.of(1e6));
	}

	private static Scene scene() {
		Hatch hatch = new Hatch(Stroke.of(Ink.BLACK, 0.2), 1, 45, true);
		return new Scene("A <title>", 50.5, 40, List.of(Group.named("a\"<&b", "<tip>", List.of(
				Text.of(NASTY, 1.5, 10, Face.CONDENSED_BOLD, 3),
				new Drawn(new Circle(20, 20, 5), Style.of(hatch, Stroke.of(Ink.BLACK, 0.3).dashed(1.5, 0.5)))))));
	}

	private static String write(Scene scene) {
		StringWriter out = new StringWriter();
		SvgWriter.write(out, scene);
		return out.toString();
	}

	private static Document parse(String svg) throws Exception {
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setNamespaceAware(true);
		return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
	}
}

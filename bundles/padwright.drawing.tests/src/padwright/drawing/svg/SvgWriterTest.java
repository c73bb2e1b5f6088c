package padwright.drawing.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.Face;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Hatch;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Style;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

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

	/** Shapes in mm as they are, a turned group by its matrix, and text at its left edge with the room that it takes. */
	@Test
	void everyThingIsWrittenAsItIsDrawn() {
		Style edged = Style.of(new SolidFill(new Ink(255, 128, 0)), Stroke.of(Ink.BLACK, 0.25).dashed(1.5, 0.5));
		Text text = Text.of("HH", 30, 20, Face.CONDENSED_BOLD, 4).anchored(Anchor.END).in(Ink.grey(64));
		double wide = new DejaVuMetrics().width(text);
		Scene scene = new Scene("T", 40, 30, List.of(new Drawn(new Rectangle(1, 2, 3, 4), edged),
				new Group(Optional.empty(), Optional.empty(), Transform.rotation(90),
						List.of(new Drawn(new Line(0, 0, 5, 6), Style.stroked(Ink.WHITE, 0.1)))), text));
		assertEquals("""
				<?xml version="1.0" encoding="UTF-8"?>
				<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="30mm" viewBox="0 0 40 30" role="img"><title>T</title>
				<path d="M1 2L4 2L4 6L1 6Z" fill="#ff8000" fill-rule="evenodd"></path>
				<path d="M1 2L4 2L4 6L1 6Z" fill="none" stroke="#000000" stroke-width="0.25" stroke-linejoin="round" \
				stroke-dasharray="1.5 0.5"></path>
				<g transform="matrix(0 1 -1 0 0 0)">
				<path d="M0 0L5 6" fill="none" stroke="#ffffff" stroke-width="0.1" stroke-linejoin="round"></path></g>
				<text x="%s" y="20" font-family="'DejaVu Sans Condensed', 'DejaVu Sans', Verdana, sans-serif" \
				font-weight="bold" font-stretch="condensed" font-size="4" textLength="%s" \
				lengthAdjust="spacingAndGlyphs" fill="#404040" xml:space="preserve">HH</text></svg>"""
				.formatted(SvgNumber.of(30 - wide), SvgNumber.of(wide)), write(scene));
	}

	/** White below, then the lines, and nothing of them outside: each hatch has a clip of its own. */
	@Test
	void aHatchIsLinesOnWhiteWithinItsOutline() throws Exception {
		Hatch level = new Hatch(Stroke.of(Ink.BLACK, 0.2), 1, 0, false);
		Scene scene = new Scene("T", 9, 9, List.of(new Drawn(new Rectangle(0, 0, 4, 3), new Style(Optional.of(level),
				Optional.empty())), new Drawn(new Circle(6, 6, 2), new Style(Optional.of(level), Optional.empty()))));
		Document document = parse(write(scene));
		Element ground = (Element) document.getElementsByTagName("path").item(0);
		assertEquals("#ffffff", ground.getAttribute("fill"));
		Element clip = (Element) document.getElementsByTagName("clipPath").item(0);
		Element outline = (Element) clip.getFirstChild().getNextSibling();
		assertEquals(ground.getAttribute("d"), outline.getAttribute("d"));
		assertEquals("evenodd", outline.getAttribute("clip-rule"));
		Element group = (Element) document.getElementsByTagName("g").item(0);
		assertEquals("url(#" + clip.getAttribute("id") + ")", group.getAttribute("clip-path"));
		Element lines = (Element) group.getFirstChild().getNextSibling();
		assertEquals("none", lines.getAttribute("fill"));
		assertTrue(lines.getAttribute("d").chars().filter(command -> command == 'L').count() >= 3, lines.getAttribute("d"));
		Element other = (Element) document.getElementsByTagName("clipPath").item(1);
		assertNotEquals(clip.getAttribute("id"), other.getAttribute("id"));
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

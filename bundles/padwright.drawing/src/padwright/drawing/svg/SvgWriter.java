package padwright.drawing.svg;

import java.io.Writer;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

import padwright.drawing.font.DejaVuMetrics;
import padwright.drawing.scene.Element;
import padwright.drawing.scene.Scene;

/**
 * Writes a scene as an SVG document of its real size in mm. The same scene gives the same text on every machine.
 */
public final class SvgWriter {

	private static final String NAMESPACE = "http://www.w3.org/2000/svg";

	private SvgWriter() {
	}

	/**
	 * Writes {@code scene} as a document of its own.
	 *
	 * @param out receives the text, which declares itself UTF-8; not closed
	 * @throws IllegalStateException if {@code out} fails
	 */
	public static void write(Writer out, Scene scene) {
		try {
			XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
			xml.writeStartDocument("UTF-8", "1.0");
			xml.writeCharacters("\n");
			writeRoot(xml, scene);
			xml.writeEndDocument();
			xml.flush();
		} catch (XMLStreamException e) {
			throw new IllegalStateException("the drawing \"" + scene.title() + "\" could not be written", e);
		}
	}

	private static void writeRoot(XMLStreamWriter xml, Scene scene) throws XMLStreamException {
		String width = SvgNumber.of(scene.width());
		String height = SvgNumber.of(scene.height());
		xml.writeStartElement("svg");
		xml.writeDefaultNamespace(NAMESPACE);
		xml.writeAttribute("width", width + "mm");
		xml.writeAttribute("height", height + "mm");
		xml.writeAttribute("viewBox", "0 0 " + width + " " + height);
		xml.writeAttribute("role", "img");
		xml.writeStartElement("title");
		xml.writeCharacters(XmlText.of(scene.title()));
		xml.writeEndElement();
		SvgElements elements = new SvgElements(new SvgTags(xml), new DejaVuMetrics());
		for (Element element : scene.elements()) {
			element.accept(elements);
		}
		xml.writeEndElement();
	}
}

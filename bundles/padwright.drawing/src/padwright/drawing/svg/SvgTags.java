package padwright.drawing.svg;

import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes tags one a line, for visitors, which cannot throw checked exceptions. */
final class SvgTags {

	private final XMLStreamWriter xml;

	SvgTags(XMLStreamWriter xml) {
		this.xml = xml;
	}

	/** Opens a tag with attributes given as name and value in turn. */
	void open(String name, String... attributes) {
		quietly(() -> {
			xml.writeCharacters("\n");
			xml.writeStartElement(name);
			for (int i = 0; i < attributes.length; i += 2) {
				xml.writeAttribute(attributes[i], XmlText.of(attributes[i + 1]));
			}
		});
	}

	void close() {
		quietly(xml::writeEndElement);
	}

	void empty(String name, String... attributes) {
		open(name, attributes);
		close();
	}

	/** A tag with text in it. */
	void text(String name, String text, String... attributes) {
		open(name, attributes);
		quietly(() -> xml.writeCharacters(XmlText.of(text)));
		close();
	}

	private static void quietly(Step step) {
		try {
			step.run();
		} catch (XMLStreamException e) {
			throw new IllegalStateException("the drawing could not be written", e);
		}
	}

	private interface Step {
		void run() throws XMLStreamException;
	}
}

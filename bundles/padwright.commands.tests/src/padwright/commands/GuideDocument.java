package padwright.commands;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page of the guide, read by the strict parser of XML that Java has, so that what browsers forgive is found. */
record GuideDocument(Path file, Document page) {

	private static final String WITHOUT_END = "<(meta|link|img|br)\\b([^>]*)>";

	static GuideDocument of(Path file) {
		try {
			DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
			builder.setErrorHandler(null);
			String closed = GuidePages.text(file).replaceAll(WITHOUT_END, "<$1$2/>");
			return new GuideDocument(file, builder.parse(new InputSource(new StringReader(closed))));
		} catch (SAXException malformed) {
			throw new AssertionError(file + " is not well-formed: " + malformed.getMessage(), malformed);
		} catch (ParserConfigurationException | IOException failed) {
			throw new UncheckedIOException(new IOException(failed));
		}
	}

	/** All elements of these names, as they come. */
	List<Element> all(String... names) {
		NodeList all = page.getElementsByTagName("*");
		return IntStream.range(0, all.getLength()).mapToObj(index -> (Element) all.item(index))
				.filter(element -> Set.of(names).contains(element.getTagName())).toList();
	}

	/** Those of its text, without what stands around it. */
	List<Element> inText(String... names) {
		return all(names).stream().filter(GuideDocument::isInMain).toList();
	}

	private static boolean isInMain(Element element) {
		return element.getParentNode() instanceof Element parent
				&& (parent.getTagName().equals("main") || isInMain(parent));
	}

	Set<String> ids() {
		return all("html", "div", "nav", "h1", "h2", "h3", "p", "figure", "table", "pre", "li").stream()
				.map(element -> element.getAttribute("id")).filter(id -> !id.isEmpty()).collect(Collectors.toSet());
	}
}

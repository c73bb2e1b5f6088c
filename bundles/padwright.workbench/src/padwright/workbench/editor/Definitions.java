package padwright.workbench.editor;

import java.util.List;

import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.hyperlink.AbstractHyperlinkDetector;
import org.eclipse.jface.text.hyperlink.IHyperlink;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.Location;

import padwright.workbench.session.Answers;
import padwright.workbench.session.Positions;

/** Makes a name a link to where it is defined. */
public final class Definitions extends AbstractHyperlinkDetector {

	@Override
	public IHyperlink[] detectHyperlinks(ITextViewer viewer, IRegion region, boolean several) {
		IDocument document = viewer.getDocument();
		List<Location> places = Answers
				.of(document, (server, text) -> server.documents()
						.definition(new DefinitionParams(text, Positions.position(document, region.getOffset()))))
				.filter(found -> found.isLeft()).<List<Location>>map(found -> List.copyOf(found.getLeft()))
				.orElse(List.of());
		IRegion word = Words.at(document, region.getOffset());
		IHyperlink[] links = places.stream().map(place -> new PlaceLink(word, place)).toArray(IHyperlink[]::new);
		return links.length == 0 ? null : links;
	}

	/** A link to a place in a document. */
	private record PlaceLink(IRegion region, Location place) implements IHyperlink {

		@Override
		public IRegion getHyperlinkRegion() {
			return new Region(region.getOffset(), region.getLength());
		}

		@Override
		public String getTypeLabel() {
			return null;
		}

		@Override
		public String getHyperlinkText() {
			return null;
		}

		@Override
		public void open() {
			Places.open(place);
		}
	}
}
